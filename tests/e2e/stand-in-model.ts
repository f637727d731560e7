import type { Page } from 'playwright-core';

/** The behaviour of the stand-in in a page of the extension. */
export interface StandIn {
  readonly state: 'downloadable' | 'available';
  /**
   * The answers in the order of the requests. The last answer is repeated. The answer `never` means that no answer ever
   * comes. `{one}`, `{other}` and `{place}` in an answer are replaced by the names and the place of the question.
   */
  readonly answers: readonly string[];
  /** The download progress, as shares of the whole, reported before the model is ready. */
  readonly download?: readonly number[];
  /** Whether the download never ends. */
  readonly neverLoads?: boolean;
}

/**
 * Adds a stand-in for the browser's language model to a page before it loads. The stand-in follows the model's
 * published interface.
 */
export async function standIn(page: Page, model: StandIn): Promise<void> {
  await page.addInitScript(({ state, answers, download, neverLoads }) => {
    let asked = 0;
    const never = new Promise<never>(() => undefined);
    class Session {
      async clone() {
        return new Session();
      }
      async prompt(question: string) {
        const answer = answers[Math.min(asked++, answers.length - 1)]!;
        if (answer === 'never') return never;
        const { people = [], place } = JSON.parse(question) as {
          people?: { name: string }[];
          place?: string;
        };
        return answer
          .replaceAll('{one}', people[0]?.name ?? '')
          .replaceAll('{other}', people[1]?.name ?? '')
          .replaceAll('{place}', place ?? '');
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
