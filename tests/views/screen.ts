import { setImmediate } from 'node:timers/promises';

/**
 * Reads and uses a page without a browser, as a teacher would. Elements are found as in Playwright (by role, label and
 * text), so that tests look the same with and without a browser. There is no layout. Only `hidden` and closed details
 * decide whether an element is visible.
 */

type Text = string | RegExp;
interface Named {
  readonly name?: Text;
  readonly exact?: boolean;
  readonly pressed?: boolean;
  readonly expanded?: boolean;
  readonly level?: number;
}

/** The longest wait, in milliseconds. A busy machine is slow, and a condition that holds is seen at once anyway. */
const PATIENCE = 25_000;

/** Elements of the page. Each use searches for the elements anew. */
export class Found {
  readonly all: () => HTMLElement[];
  readonly #says: string;

  constructor(all: () => HTMLElement[], says: string) {
    this.all = all;
    this.#says = says;
  }

  #within(says: string, find: (root: HTMLElement) => HTMLElement[]): Found {
    return new Found(() => [...new Set(this.all().flatMap(find))], `${this.#says} ${says}`);
  }

  locator(selector: string): Found {
    return this.#within(selector, (root) => [...root.querySelectorAll<HTMLElement>(selector)]);
  }

  getByRole(role: keyof typeof ROLES, named: Named = {}): Found {
    return this.#within(`${role} ${named.name ?? ''}`, (root) =>
      [...root.querySelectorAll<HTMLElement>(ROLES[role])].filter(
        (element) => !isUnseen(element) && roleOf(element) === role && isNamed(element, named),
      ),
    );
  }

  /** Finds the innermost elements with the given text. */
  getByText(text: Text, { exact = false } = {}): Found {
    const has = (element: Element): boolean => fits(textOf(element), text, exact);
    return this.#within(`text ${text}`, (root) =>
      [...root.querySelectorAll<HTMLElement>('*')].filter(
        (element) => has(element) && ![...element.children].some(has),
      ),
    );
  }

  getByLabel(text: Text, { exact = false } = {}): Found {
    return this.#within(`label ${text}`, (root) =>
      [...root.querySelectorAll<HTMLElement>('*')].filter((element) =>
        labelsOf(element).some((label) => fits(label, text, exact)),
      ),
    );
  }

  filter({ hasText, has, hasNotText }: { hasText?: Text; has?: Found; hasNotText?: Text }): Found {
    return new Found(
      () =>
        this.all().filter(
          (element) =>
            (hasText === undefined || fits(textOf(element), hasText, false)) &&
            (hasNotText === undefined || !fits(textOf(element), hasNotText, false)) &&
            (has === undefined || has.all().some((one) => element.contains(one))),
        ),
      `${this.#says} of which one has ${hasText ?? hasNotText ?? 'another'}`,
    );
  }

  nth(n: number): Found {
    return new Found(() => this.all().slice(n).slice(0, 1), `${this.#says} (${n})`);
  }
  first(): Found {
    return this.nth(0);
  }

  count(): number {
    return this.all().length;
  }
  isVisible(): boolean {
    return this.all().some((element) => !isUnseen(element));
  }
  allTextContents(): string[] {
    return this.all().map((element) => element.textContent ?? '');
  }

  /**
   * Waits until the element exists, and returns it. Throws an error if there are several elements, which is a fault of
   * the test.
   */
  async one(): Promise<HTMLElement> {
    await until(() => this.all().length > 0, `There is no ${this.#says}.`);
    const [element, ...others] = this.all();
    if (others.length > 0) throw new Error(`There are ${others.length + 1} of ${this.#says}.`);
    return element!;
  }
  async waitFor({ state = 'visible' }: { state?: 'visible' | 'detached' } = {}): Promise<void> {
    if (state === 'detached') await until(() => this.all().length === 0, `${this.#says} stays.`);
    else if (isUnseen(await this.one())) await until(() => this.isVisible(), `${this.#says} is not seen.`);
  }

  async textContent(): Promise<string> {
    return (await this.one()).textContent ?? '';
  }
  async inputValue(): Promise<string> {
    return ((await this.one()) as HTMLInputElement).value;
  }
  async isChecked(): Promise<boolean> {
    return ((await this.one()) as HTMLInputElement).checked;
  }
  async getAttribute(name: string): Promise<string | null> {
    return (await this.one()).getAttribute(name);
  }

  /** Waits until the element can be pressed or written in: visible, and not disabled. */
  async #ready(): Promise<HTMLElement> {
    await this.one();
    await until(() => {
      const [element] = this.all();
      return element !== undefined && !isUnseen(element) && !('disabled' in element && element.disabled);
    }, `${this.#says} cannot be used.`);
    return this.one();
  }

  async click(): Promise<void> {
    const element = await this.#ready();
    moveFocus(element.closest<HTMLElement>(FOCUSABLE));
    element.click();
    await setImmediate();
  }
  async focus(): Promise<void> {
    moveFocus(await this.one());
    await setImmediate();
  }
  async fill(text: string): Promise<void> {
    const element = (await this.#ready()) as HTMLInputElement;
    if (element.readOnly) throw new Error(`${this.#says} cannot be written in.`);
    moveFocus(element);
    setValue(element, text);
    element.dispatchEvent(new Event('input', { bubbles: true }));
    if (/^(?:color|date|number|range|time)$/.test(element.type)) change(element);
    else written.add(element);
    await setImmediate();
  }
  /** Chooses an option by its value or its text. */
  async selectOption(option: string): Promise<void> {
    const select = (await this.#ready()) as HTMLSelectElement;
    const find = (): HTMLOptionElement | undefined =>
      [...select.options].find((one) => one.value === option || textOf(one) === option);
    await until(() => find() !== undefined, `${this.#says} has no ${option}.`);
    moveFocus(select);
    setValue(select, find()!.value);
    select.dispatchEvent(new Event('input', { bubbles: true }));
    change(select);
    await setImmediate();
  }
  async check(wanted = true): Promise<void> {
    const box = (await this.#ready()) as HTMLInputElement;
    if (box.checked !== wanted) await this.click();
    await until(
      () => (this.all()[0] as HTMLInputElement).checked === wanted,
      `${this.#says} does not change.`,
    );
  }
  uncheck(): Promise<void> {
    return this.check(false);
  }
  async press(key: string): Promise<void> {
    moveFocus(await this.#ready());
    await pressKey(key);
  }
  /** Chooses files in a file field. */
  async setInputFiles(files: readonly File[]): Promise<void> {
    const field = (await this.one()) as HTMLInputElement;
    Object.defineProperty(field, 'files', { value: [...files], configurable: true });
    change(field);
    await setImmediate();
  }
}

/** The page that is open. */
export const screen = new Found(() => [document.documentElement], 'page');

/**
 * Presses a key where the focus is, with the effects that browsers add: Enter presses buttons and links, and confirms
 * the text of a field.
 */
export async function pressKey(keys: string): Promise<void> {
  const parts = keys.split('+');
  const key = parts.at(-1)!;
  const target = (document.activeElement ?? document.body) as HTMLElement;
  const given = {
    key,
    bubbles: true,
    cancelable: true,
    ctrlKey: parts.includes('Control'),
    altKey: parts.includes('Alt'),
    shiftKey: parts.includes('Shift'),
  };
  if (target.dispatchEvent(new KeyboardEvent('keydown', given))) {
    if (key === 'Enter' && target.matches('button, a[href], summary')) target.click();
    else if (key === 'Enter' && target.localName === 'input') {
      changeIfWritten(target);
      (target as HTMLInputElement).form?.requestSubmit();
    } else if (key === 'Tab') moveFocus(null);
  }
  target.dispatchEvent(new KeyboardEvent('keyup', given));
  await setImmediate();
}

/** Waits until a condition holds. The condition is checked again after each change of the page. */
export async function until(holds: () => boolean, otherwise: string): Promise<void> {
  if (holds()) return;
  await new Promise<void>((resolve, reject) => {
    const end = (): void => {
      watch.disconnect();
      clearTimeout(timer);
    };
    const watch = new MutationObserver(() => {
      if (!holds()) return;
      end();
      resolve();
    });
    const timer = setTimeout(() => {
      end();
      if (holds()) resolve();
      else reject(new Error(`${otherwise} The page says: ${textOf(document.body)}`));
    }, PATIENCE);
    watch.observe(document, { subtree: true, childList: true, characterData: true, attributes: true });
  });
  await setImmediate();
}

/** Fields that were written in and not left since. */
const written = new Set<Element>();

function change(element: Element): void {
  element.dispatchEvent(new Event('change', { bubbles: true }));
}
function changeIfWritten(element: Element): void {
  if (written.delete(element) && element.isConnected) change(element);
}
function moveFocus(to: HTMLElement | null): void {
  const from = document.activeElement;
  if (from === to) return;
  if (from) changeIfWritten(from);
  if (to) to.focus();
  else if (from instanceof HTMLElement) from.blur();
}
/** Sets a value as typing does, and bypasses the setter that the renderer has put over `value` of this element. */
function setValue(element: HTMLInputElement | HTMLSelectElement, value: string): void {
  Object.getOwnPropertyDescriptor(Object.getPrototypeOf(element), 'value')!.set!.call(element, value);
}

const FOCUSABLE = 'button, a[href], input, select, textarea, summary, [tabindex]';
const ROLES = {
  alert: '[role=alert]',
  article: 'article',
  button: 'button, [role=button]',
  checkbox: 'input[type=checkbox]',
  columnheader: 'th',
  combobox: 'select, input[role=combobox], [role=combobox]',
  group: 'fieldset, [role=group]',
  heading: 'h1, h2, h3, h4, h5, h6',
  link: 'a[href]',
  listitem: 'li',
  main: 'main',
  navigation: 'nav',
  progressbar: 'progress, [role=progressbar]',
  radio: 'input[type=radio]',
  region: 'section, [role=region]',
  slider: 'input[type=range]',
  status: '[role=status], output',
  textbox: 'textarea, input:not([type]), input[type=text], [role=textbox]',
} as const;

function roleOf(element: Element): keyof typeof ROLES | null {
  const given = element.getAttribute('role');
  if (given !== null) return given as keyof typeof ROLES;
  return (Object.keys(ROLES) as (keyof typeof ROLES)[]).find((role) => element.matches(ROLES[role])) ?? null;
}

function isNamed(element: Element, { name, exact = false, pressed, expanded, level }: Named): boolean {
  const says = (attribute: string, wanted: boolean | undefined): boolean =>
    wanted === undefined || element.getAttribute(attribute) === String(wanted);
  return (
    (name === undefined || fits(nameOf(element), name, exact)) &&
    says('aria-pressed', pressed) &&
    says('aria-expanded', expanded) &&
    (level === undefined || element.localName === `h${level}`)
  );
}

function fits(text: string, wanted: Text, exact: boolean): boolean {
  if (wanted instanceof RegExp) return wanted.test(text);
  const whole = wanted.replace(/\s+/g, ' ').trim();
  return exact ? text === whole : text.toLowerCase().includes(whole.toLowerCase());
}

function textOf(element: Element): string {
  if (/^(?:script|style|head|title)$/.test(element.localName)) return '';
  return (element.textContent ?? '').replace(/\s+/g, ' ').trim();
}

/** Returns the name of an element, from its attributes, its labels or its text. */
function nameOf(element: Element): string {
  const [label] = labelsOf(element);
  if (label !== undefined) return label;
  if (element.localName === 'fieldset')
    return spoken(element.querySelector('legend') ?? document.createElement('i'));
  if (element.localName === 'section') return '';
  return spoken(element) || (element.getAttribute('title') ?? '');
}
function spoken(element: Element): string {
  const parts = [...element.childNodes].map((child) => {
    if (child.nodeType === Node.TEXT_NODE) return child.nodeValue ?? '';
    if (!(child instanceof Element) || child.getAttribute('aria-hidden') === 'true') return '';
    return child.getAttribute('aria-label') ?? spoken(child);
  });
  return parts.join('').replace(/\s+/g, ' ').trim();
}
function labelsOf(element: Element): string[] {
  const by = element.getAttribute('aria-labelledby');
  if (by !== null)
    return [
      by
        .split(/\s+/)
        .map((id) => document.getElementById(id))
        .map((one) => (one ? textOf(one) : ''))
        .join(' '),
    ];
  const label = element.getAttribute('aria-label');
  if (label !== null) return [label];
  if (!/^(?:input|select|textarea|progress|output|meter)$/.test(element.localName)) return [];
  const around = element.closest('label');
  const named = element.id ? [...document.querySelectorAll(`label[for="${element.id}"]`)] : [];
  return [...new Set([...(around ? [around] : []), ...named])].map(textOf);
}

function isUnseen(element: Element): boolean {
  if (!element.isConnected || element.closest('[hidden]')) return true;
  const closed = element.closest('details:not([open])');
  const summary = element.closest('summary');
  return closed !== null && closed !== element && !(summary && summary.parentElement === closed);
}
