const ONE = 'The lighthouse keeper answered the ferry.';
const TALE = `<p>${ONE}</p>`;
const script = (code: string): string => `<script>${code}</script>`;

/** A page made to mislead the extension or to keep it busy. */
export interface HostilePage {
  readonly what: string;
  readonly html: string;
  /** A word of the page that the extension must find in spite of the page's tricks. */
  readonly finds?: string;
  /** Whether the page leaves the marks in place. */
  readonly keepsMarks?: boolean;
}

const clobbers = (...names: string[]): string => names.map((name) => `<input name="${name}">`).join('');

export const hostilePages: readonly HostilePage[] = [
  {
    what: 'forms named like methods of the document',
    html: `${TALE}${['getElementById', 'querySelectorAll', 'querySelector', 'createElement', 'createRange', 'createTreeWalker', 'adoptedStyleSheets', 'documentElement', 'defaultView', 'addEventListener', 'getElementsByTagName', 'getSelection', 'title', 'URL', 'cloneNode', 'activeElement', 'caretPositionFromPoint', 'createElementNS'].map((name) => `<form name="${name}"></form>`).join('')}`,
  },
  { what: 'a picture named body', html: `<img name="body" alt="">${TALE}` },
  {
    what: 'a form with fields named like its own properties',
    html: `<form>${clobbers('parentNode', 'parentElement', 'childNodes', 'children', 'firstChild', 'nextSibling', 'previousSibling', 'nodeType', 'tagName', 'textContent', 'className', 'isConnected', 'shadowRoot', 'checkVisibility', 'getBoundingClientRect', 'getAnimations', 'closest', 'clientHeight', 'assignedSlot', 'getRootNode', 'ownerDocument', 'isContentEditable', 'style')}${TALE}</form>`,
  },
  {
    what: 'scripts that patch what everything is built of',
    html: `${script(`
      const no = () => { throw new Error('patched'); };
      for (const proto of [Array.prototype, Map.prototype, Set.prototype, WeakMap.prototype, Promise.prototype, String.prototype, RegExp.prototype])
        for (const name of Reflect.ownKeys(proto)) {
          if (name === 'constructor') continue;
          try { Object.defineProperty(proto, name, { value: no, configurable: false }); } catch {}
        }
      window.Range = window.StaticRange = window.Highlight = window.Map = window.MutationObserver = window.IntersectionObserver = no;
      window.getComputedStyle = window.requestAnimationFrame = window.setTimeout = no;
      HighlightRegistry.prototype.set = HighlightRegistry.prototype.get = no;
      Node.prototype.compareDocumentPosition = Element.prototype.getBoundingClientRect = no;
      Object.defineProperty(document, 'adoptedStyleSheets', { get: no, set: no });
    `)}${TALE}`,
  },
  { what: 'two megabytes in one text node', html: `<p>${`${ONE} `.repeat(50_000)}</p>` },
  {
    what: 'two megabytes without a blank',
    html: `${TALE}<p>${'ferry'.repeat(400_000)}</p>`,
  },
  {
    // Chromium 156 itself crashes when it lays out 30,000 nested elements. The elements are therefore in towers that
    // are 2,000 deep. Only one tower is shown, because its layout alone takes seconds.
    what: '100,000 nested elements',
    html: `${TALE}${script(`
      for (let tower = 0; tower < 50; tower++) {
        const root = document.createElement('div');
        let outer = document.createElement('span');
        outer.textContent = 'harbour ';
        for (let n = 0; n < 2000; n++) {
          const around = document.createElement('span');
          around.append(outer);
          outer = around;
        }
        root.append(outer);
        root.hidden = tower > 0;
        document.body.append(root);
      }
    `)}`,
    finds: 'harbour',
  },
  {
    what: 'signs without width and changes of direction',
    html: `<p>The l\u200bi\u200dg\u00adh\u2060t\u200bh\ufeffouse \u202ekeeper\u202c \u2066answered\u2069 the \u200f\u200eferry\u061c.</p><p dir="rtl">${'\u202e'.repeat(5000)}${ONE}</p><p>${'\u0301'.repeat(20_000)}a${'\u0301'.repeat(20_000)} ${ONE}</p>`,
  },
  {
    what: 'words of 10,000 letters',
    html: `${TALE}<p>${Array.from({ length: 50 }, (_, n) => String.fromCharCode(97 + (n % 26)).repeat(5000) + 'quay'.repeat(1250 + n)).join(' ')}</p>`,
  },
  {
    what: 'marks taken away in a loop',
    html: `${TALE}${script('setInterval(() => { CSS.highlights.clear(); document.adoptedStyleSheets = []; }, 0)')}`,
    keepsMarks: false,
  },
  {
    what: 'messages that look like ours',
    html: `${TALE}${script(`
      for (const message of [{ to: 'page', ask: 'stop' }, { to: 'page', ask: 'words' }, { news: 'page', shaded: false }, { done: 1 }])
        setInterval(() => {
          window.postMessage(message, '*');
          try { chrome.runtime.sendMessage('x'.repeat(32), message, () => undefined); } catch {}
          dispatchEvent(new CustomEvent('message', { detail: message }));
        }, 5);
    `)}`,
  },
  {
    what: 'elements and marks named like ours',
    html: `<style>::highlight(wr-1), ::highlight(wr-2) { color: red }</style><div id="wordreach" class="wr-1 sheet card"></div><div popover="manual" id="wr-2"></div>${script(`
      CSS.highlights.set('wr-1', new Highlight());
      CSS.highlights.set('wr-9', new Highlight());
      var wordreach = { stop() { throw 1 } }, wordreachParts = { article: 1, card: 1 };
    `)}${TALE}`,
  },
  {
    what: 'nothing allowed by its policy, and trusted types',
    html: `<meta http-equiv="content-security-policy" content="default-src 'none'; require-trusted-types-for 'script'; trusted-types 'none'; sandbox">${TALE}`,
  },
  {
    what: 'a text that never ends growing',
    html: `${TALE}<p id="grows"></p>${script(`setInterval(() => { grows.append('A gull answered. '); }, 2)`)}`,
    // The marks are drawn in a way that the page cannot see, so the test does not count them.
    keepsMarks: false,
  },
];
