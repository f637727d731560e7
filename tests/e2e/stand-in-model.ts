import type { Page } from 'playwright-core';

/** What the stand-in does in a page of the extension. */
export interface StandIn {
  readonly state: 'downloadable' | 'available';
  /** Answers to the first, the second question and so on, the last again and again; `never`: none ever comes. */
  readonly answers: readonly string[];
  /** Shares of a download that are told before the model is there. */
  readonly download?: readonly number[];
  /** The download never ends. */
  readonly neverLoads?: boolean;
}

/** Puts a stand-in for the browser's language model, after the interface published for it, into a page before it loads. */
export async function standIn(page: Page, model: StandIn): Promise<void> {
  await page.addInitScript(({ state, answers, download, neverLoads }) => {
    let asked = 0;
    const never = new Promise<never>(() => undefined);
    class Session {
      async clone() {
        return new Session();
      }
      async prompt() {
        const answer = answers[Math.min(asked++, answers.length - 1)]!;
        return answer === 'never' ? never : answer;
      }
      destroy() {}
      static availability = async () => state;
      static async create({ monitor }: { monitor(target: EventTarget): void }) {
        const target = new EventTarget();
        monitor(target);
        for (const loaded of download ?? [])
          target.dispatchEvent(Object.assign(new Event('downloadprogress'), { loaded, total: 1 }));
        return neverLoads ? never : new Session();
      }
    }
    Object.defineProperty(globalThis, 'LanguageModel', { value: Session, configurable: true });
  }, model);
}
