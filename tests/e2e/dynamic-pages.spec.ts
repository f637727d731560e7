import type { Page } from 'playwright-core';
import { afterAll, beforeAll, beforeEach, expect, test } from 'vitest';
import { startPlainBrowser } from './browser.ts';
import { openOverlayPage } from './overlay-page.ts';

/** One tab shows one page after the other, because a new tab takes a second. */
let tab: Page;
beforeAll(async () => {
  const browser = await startPlainBrowser();
  tab = await browser.newPage();
});
beforeEach(() => tab.goto('about:blank'));
afterAll(() => tab?.context().browser()?.close());

/**
 * Ways in which pages show and hide text. Each has a name, the page's markup, the change made by a script, and the
 * words marked after the change.
 */
const ways: readonly (readonly [way: string, body: string, how: () => void, marked: string])[] = [
  [
    'sibling by class',
    '<style>.p{max-height:0;overflow:hidden}.on + .p{max-height:9em}</style><button>Ask</button><div class="p">tide</div>',
    () => {
      document.querySelector('button')!.className = 'on';
    },
    'Ask tide',
  ],
  [
    'aria-expanded',
    '<style>.p{display:none}[aria-expanded=true] + .p{display:block}</style><button aria-expanded="false">Ask</button><div class="p">tide</div>',
    () => {
      document.querySelector('button')!.ariaExpanded = 'true';
    },
    'Ask tide',
  ],
  [
    'data-state',
    '<style>[data-state=closed]{display:none}</style><p>Ask</p><div data-state="closed">tide</div>',
    () => {
      document.querySelector('div')!.dataset.state = 'open';
    },
    'Ask tide',
  ],
  [
    'aria-hidden',
    '<style>[aria-hidden=true]{display:none}</style><p>Ask</p><div aria-hidden="true">tide</div>',
    () => {
      document.querySelector('div')!.ariaHidden = 'false';
    },
    'Ask tide',
  ],
  [
    'fade in',
    '<style>div{opacity:0;transition:opacity .3s}.on{opacity:1}</style><p>Ask</p><div>tide</div>',
    () => {
      document.querySelector('div')!.className = 'on';
    },
    'Ask tide',
  ],
  [
    'fade out',
    '<style>div{opacity:1;transition:opacity .3s}.off{opacity:0}</style><p>Ask</p><div>tide</div>',
    () => {
      document.querySelector('div')!.className = 'off';
    },
    'Ask',
  ],
  [
    'unfold',
    '<style>div{max-height:0;overflow:hidden;transition:max-height .3s}.on{max-height:9em}</style><p>Ask</p><div>tide</div>',
    () => {
      document.querySelector('div')!.className = 'on';
    },
    'Ask tide',
  ],
  [
    'fold',
    '<style>div{max-height:9em;overflow:hidden;transition:max-height .3s}.off{max-height:0}</style><p>Ask</p><div>tide</div>',
    () => {
      document.querySelector('div')!.className = 'off';
    },
    'Ask',
  ],
  [
    'rows',
    '<style>div{display:grid;grid-template-rows:0fr;transition:grid-template-rows .3s}.on{grid-template-rows:1fr}i{display:block;overflow:hidden;min-height:0}</style><p>Ask</p><div><i>tide</i></div>',
    () => {
      document.querySelector('div')!.className = 'on';
    },
    'Ask tide',
  ],
  [
    'slot moved',
    '<p>Ask</p><x-a><b slot="n">tide</b></x-a>',
    () => {
      document.querySelector('b')!.slot = 'm';
    },
    'Ask tide',
  ],
  [
    'made editable',
    '<p>Ask</p><div>tide</div>',
    () => {
      document.querySelector('div')!.contentEditable = 'true';
    },
    'Ask',
  ],
  [
    'style text',
    '<style>div{display:none}</style><p>Ask</p><div>tide</div>',
    () => {
      document.querySelector('style')!.textContent = '';
    },
    'Ask tide',
  ],
  [
    'dialog',
    '<p>Ask</p><dialog>tide</dialog>',
    () => {
      document.querySelector('dialog')!.showModal();
    },
    'Ask tide',
  ],
  [
    'popover',
    '<p>Ask</p><div popover>tide</div>',
    () => {
      document.querySelector('div')!.showPopover();
    },
    'Ask tide',
  ],
];
/** Adds a slot for `m` to each host, so that an element elsewhere in the page appears once it is moved into the host. */
function addSlots(): void {
  for (const host of document.querySelectorAll('x-a'))
    host.attachShadow({ mode: 'open' }).innerHTML = '<slot name="m"></slot>';
}

test.each(ways)(
  'text that a page shows or hides is marked correctly: %s',
  async (_way, body, how, marked) => {
    const at = await openOverlayPage(tab, `<!doctype html><body>${body}`, addSlots);
    await at.page.evaluate(how);
    await expect.poll(at.marked, { timeout: 8000 }).toBe(marked);
  },
);
