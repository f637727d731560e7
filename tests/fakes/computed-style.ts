import { vi } from 'vitest';

/** The values an element has in a browser where no style says otherwise; happy-dom computes `display` of blocks alone. */
const INITIAL: Readonly<Record<string, string>> = {
  display: 'inline',
  visibility: 'visible',
  backgroundColor: 'rgba(0, 0, 0, 0)',
  backgroundImage: 'none',
  opacity: '1',
  overflowY: 'visible',
  contentVisibility: 'visible',
  position: 'static',
  float: 'none',
  fontSize: '16px',
  fontFamily: 'serif',
  marginLeft: '0px',
  marginRight: '0px',
  paddingLeft: '0px',
  paddingRight: '0px',
  textIndent: '0px',
  left: 'auto',
  top: 'auto',
  clip: 'auto',
  clipPath: 'none',
  color: 'rgb(0, 0, 0)',
  webkitTextFillColor: 'rgb(0, 0, 0)',
  backgroundClip: 'border-box',
};

/**
 * Gives elements the initial values that happy-dom leaves out, so that what reads a page can be tried without a browser. An element has the box that
 * its own `left`, `top` and `width` say, 20 pixels high; any other has none. Static ranges, which happy-dom lacks, hold what they are made of.
 */
export function computeStyles(): void {
  const computed = getComputedStyle;
  vi.stubGlobal('getComputedStyle', (element: Element) => {
    const style = computed(element);
    return new Proxy(style, {
      get: (target, name) => Reflect.get(target, name) || INITIAL[String(name)] || '',
    });
  });
  vi.stubGlobal(
    'StaticRange',
    class {
      constructor(ends: StaticRangeInit) {
        Object.assign(this, ends);
      }
    },
  );
  vi.spyOn(HTMLElement.prototype, 'getBoundingClientRect').mockImplementation(function (this: HTMLElement) {
    const [left = 0, top = 0, width = 0] = ['left', 'top', 'width'].map(
      (side) => Number.parseFloat(this.style.getPropertyValue(side)) || 0,
    );
    return new DOMRect(left, top, width, width && 20);
  });
}
