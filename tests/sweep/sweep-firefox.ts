import { startFirefox } from '../e2e/firefox.ts';
import { waitFor } from '../e2e/wait-for.ts';
import {
  PATIENCE,
  readState,
  readTasks,
  type SweepBrowser,
  unsettle,
  type Visit,
  whenMarked,
} from './visit.ts';

/** A Firefox whose sidebar is read beside the page, the network cut off. */
export async function sweepFirefox(): Promise<SweepBrowser> {
  const firefox = await startFirefox();
  // A page of the extension asks the visited pages what they have read, as the panel does.
  const asker = await firefox.open(firefox.inside('privacy.html'));
  const figure = (): Promise<string | null> =>
    firefox
      .inSidebar((document) => document.querySelector('.reach-figure')?.textContent ?? null)
      .catch(() => null);
  return {
    async visit(address): Promise<Visit> {
      const page = await firefox.openText(address);
      try {
        await page.evaluate(unsettle);
        const before = await page.evaluate(readState);
        const marked = page.evaluate(whenMarked, { wanted: true, patience: PATIENCE });
        const pressed = Date.now();
        await firefox.press();
        const shown = await waitFor(
          async () => {
            const says = await figure();
            if (says === null) throw new Error('The sidebar shows no figure.');
            return { says, at: Date.now() };
          },
          { timeout: PATIENCE, interval: 20 },
        ).catch(() => null);
        const marks = await marked;
        const during = await page.evaluate(readState);
        const read = await asker.evaluate(askFront, { address });
        const says = shown?.says ?? (await firefox.inSidebar((document) => document.body.textContent ?? ''));
        const unmarked = page.evaluate(whenMarked, { wanted: false, patience: PATIENCE });
        await firefox.press();
        await unmarked;
        return {
          marks: marks && marks - pressed,
          figure: shown && shown.at - pressed,
          says,
          words: read?.words ?? [],
          scope: read?.scope ?? 'none',
          longestTask: await page.evaluate(readTasks),
          errors: [],
          states: [before, during, await page.evaluate(readState)],
        };
      } finally {
        await page.close();
      }
    },
    close: firefox.close,
  };
}

/** Runs in a page of the extension. */
async function askFront({ address }: { address: string }): Promise<Pick<Visit, 'words' | 'scope'> | null> {
  const { tabs } = (globalThis as unknown as { browser: typeof chrome }).browser;
  for (const { id } of await tabs.query({})) {
    const question = { to: 'page', ask: 'words' };
    const reply = await tabs.sendMessage(id!, question, { frameId: 0 }).catch(() => null);
    const done = (reply as { done?: Pick<Visit, 'words' | 'scope'> & { url: string } } | null)?.done;
    if (done?.url === address) return done;
  }
  return null;
}
