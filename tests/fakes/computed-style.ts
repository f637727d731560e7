import { vi } from 'vitest';

/** The initial style values of an element in a browser. happy-dom computes only `display`, and only for blocks. */
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
 * Gives elements the initial style values that happy-dom leaves out, so that code that reads a page can be tested
 * without a browser. An element with its own `left`, `top` and `width` has a box 20 pixels high; any other element has
 * no box. Static ranges, which happy-dom lacks, hold the values given to them.
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
