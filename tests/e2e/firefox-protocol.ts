import { type BrowserType, firefox } from 'playwright-core';

/**
 * Sends Firefox a command of WebDriver BiDi (https://www.w3.org/TR/webdriver-bidi/) on the single connection that
 * Firefox allows.
 */
export type Ask = <T>(method: string, params: object) => Promise<T>;

/** Internal parts of Playwright 1.65: its own connection to Firefox. */
interface Message {
  readonly id: number;
  readonly method: string;
  readonly params: {
    type?: string;
    context?: string;
    contexts?: readonly string[];
    url?: string;
    expression?: string;
  };
}
interface Transport {
  send(message: Message): void;
  onmessage(message: object): void;
}
interface Inner {
  readonly _browserSession: { send: Ask };
  readonly _bidiPages: ReadonlyMap<string, { _page: { emulatedMedia(): Media } }>;
}
interface InnerType {
  connectToTransport(transport: Transport, options: object): Promise<Inner>;
}
type Media = Readonly<Record<'media' | 'colorScheme' | 'reducedMotion' | 'forcedColors', string>>;

/**
 * Returns the browsing context of Firefox's own window, which surrounds the web pages. The flag
 * `--remote-allow-system-access` allows this access.
 */
export async function findWindow(ask: Ask): Promise<string> {
  const { contexts } = await ask<{ contexts: { context: string; url: string }[] }>(
    'browsingContext.getTree',
    { 'moz:scope': 'chrome' },
  );
  const window = contexts.find(({ url }) => url.includes('browser.xhtml'));
  if (!window) throw new Error('Firefox has no window.');
  return window.context;
}

/** The place where code runs: a browsing context, or a sandbox of its own in that context. */
interface Target {
  readonly context: string;
  readonly sandbox?: string;
}

/** Runs a function, given as source text, in a browsing context. Its argument and its result are passed as JSON. */
export async function callIn<T>(ask: Ask, at: string | Target, code: string, given: unknown): Promise<T> {
  const said = await ask<
    | { type: 'success'; result: { value?: string } }
    | { type: 'exception'; exceptionDetails: { text: string } }
  >('script.callFunction', {
    // esbuild may add calls of `__name` to functions.
    functionDeclaration: `async (given) => {
      const __name = (named) => named;
      return JSON.stringify(await (${code})(JSON.parse(given)));
    }`,
    arguments: [{ type: 'string', value: JSON.stringify(given ?? null) }],
    awaitPromise: true,
    userActivation: true,
    target: typeof at === 'string' ? { context: at } : at,
  });
  if (said.type === 'exception') throw new Error(said.exceptionDetails.text);
  return (said.result.value === undefined ? undefined : JSON.parse(said.result.value)) as T;
}

/** Pages of extensions and of the browser itself. Firefox reports only that such a page was opened. */
const SILENT = /^(?:moz-extension:|about:(?!blank|srcdoc|reader))/;

/**
 * Starts a stock Firefox by Playwright, whose Firefox driver is new. This code adds three things: Pages open as tabs
 * instead of windows. Media features, for which Firefox 153 has no command, are set in Firefox's window. Events that
 * Firefox leaves out for pages of extensions are added.
 */
export async function startByPlaywright<T>(
  start: (type: BrowserType) => Promise<T>,
): Promise<{ started: T; ask: Ask }> {
  const type = (
    firefox as unknown as { _connection: { toImpl(type: unknown): { _bidiFirefox: InnerType } } }
  )._connection.toImpl(firefox)._bidiFirefox;
  const connect = type.connectToTransport;
  let inner: Inner | undefined;
  const ask: Ask = (method, params) => {
    if (!inner) throw new Error('Playwright has not started Firefox by WebDriver BiDi.');
    return inner._browserSession.send(method, params);
  };
  type.connectToTransport = async (transport, options) => {
    const send = transport.send.bind(transport);
    const connecting = connect.call(type, transport, options);
    const tell = transport.onmessage.bind(transport);
    const closing = new Map<number, string>();
    const unknown = new Map<string, object[]>();
    const frames = new Set<string>();
    transport.send = (message) => {
      const { id, method, params } = message;
      if (method === 'emulation.setMediaFeaturesOverride') {
        const done = params.contexts ? setMedia(ask, inner!, params.contexts[0]!) : Promise.resolve();
        done.then(
          () => tell({ type: 'success', id, result: {} }),
          (error: Error) => tell({ type: 'error', id, error: '', message: error.message }),
        );
        return;
      }
      if (method === 'browsingContext.create') params.type = 'tab';
      // Firefox 153 ends the page's process when `ariaLabelledByElements` is read a second time from outside the page's
      // own scripts. The attribute gives the same information.
      if (params.expression)
        params.expression = params.expression.replaceAll('.ariaLabelledByElements', '.notRead');
      if (method === 'browsingContext.close') closing.set(id, params.context!);
      send(message);
    };
    transport.onmessage = (message) => {
      const { id, method, params } = message as Message;
      const { context, url } = params ?? {};
      if (context !== undefined && unknown.has(context)) {
        unknown.get(context)!.push(message);
        return;
      }
      const isSilent = SILENT.test(url ?? '');
      const isUnknown = !inner?._bidiPages.has(context!) && !frames.has(context!);
      if (method === 'browsingContext.navigationStarted' && isSilent && isUnknown) {
        // A page of the extension opened a tab. Later messages about the tab wait until the tab is known.
        const known = ask<{ contexts: object[] }>('browsingContext.getTree', { root: context, maxDepth: 0 });
        unknown.set(context!, [message]);
        void known
          .then(
            ({ contexts }) => {
              // Playwright already knows frames, so only a tab is reported.
              if ((contexts[0] as { parent?: string | null }).parent) frames.add(context!);
              else tell({ type: 'event', method: 'browsingContext.contextCreated', params: contexts[0] });
            },
            // The tab is already closed.
            () => frames.add(context!),
          )
          .then(() => {
            const late = unknown.get(context!)!;
            unknown.delete(context!);
            for (const message of late) transport.onmessage(message);
          });
        return;
      }
      tell(message);
      if (method === 'browsingContext.navigationCommitted' && isSilent)
        // A page that is already closed, or that allows no scripts, has nothing left to wait for.
        void ask('script.callFunction', enter(context!))
          .catch(() => undefined)
          .then(() => {
            for (const event of ['domContentLoaded', 'load'])
              tell({ type: 'event', method: `browsingContext.${event}`, params: { context, url } });
          });
      const closed = closing.get(id);
      if (closed && inner!._bidiPages.has(closed))
        tell({ type: 'event', method: 'browsingContext.contextDestroyed', params: { context: closed } });
      closing.delete(id);
    };
    inner = await connecting;
    return inner;
  };
  try {
    return { started: await start(firefox), ask };
  } finally {
    type.connectToTransport = connect;
  }
}

/**
 * Returns the first command for a page of an extension. After this command, Firefox reports the scripts that run in the
 * page. The answer comes when the page has loaded.
 */
function enter(context: string): object {
  const code = (): Promise<void> => {
    // The tests use `chrome`, which returns no promises in a Firefox extension of manifest version 2.
    Object.defineProperty(globalThis, 'chrome', { value: (globalThis as { browser?: unknown }).browser });
    return new Promise((resolve) => {
      if (document.readyState === 'complete') resolve();
      else addEventListener('load', () => resolve());
    });
  };
  return { functionDeclaration: String(code), awaitPromise: true, target: { context } };
}

declare const ChromeUtils: {
  importESModule(address: string): {
    NavigableManager: { getBrowsingContextById(id: string): Record<string, string> };
  };
};

async function setMedia(ask: Ask, inner: Inner, page: string): Promise<void> {
  const media = inner._bidiPages.get(page)!._page.emulatedMedia();
  const set = ({ page, media }: { page: string; media: Media }): void => {
    const { NavigableManager } = ChromeUtils.importESModule(
      'chrome://remote/content/shared/NavigableManager.sys.mjs',
    );
    const context = NavigableManager.getBrowsingContextById(page);
    const or = (value: string, none: string): string => (value === 'no-override' ? none : value);
    context.mediumOverride = or(media.media, '');
    context.prefersColorSchemeOverride = or(media.colorScheme, 'none');
    context.prefersReducedMotionOverride = or(media.reducedMotion, 'none');
    context.forcedColorsOverride = or(media.forcedColors, 'none');
  };
  await callIn(ask, await findWindow(ask), String(set), { page, media });
}
