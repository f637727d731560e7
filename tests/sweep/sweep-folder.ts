import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Outcome, scoreVisit } from './score-visit.ts';
import { serveFolder } from './serve-folder.ts';
import type { SweepBrowser, Visit } from './visit.ts';

/** The longest time a visit may take, in milliseconds. A longer visit is a fault. */
const LONGEST = 40_000;

export interface SweepChoices {
  /** Selects the pages to visit, by their names. If left out, all pages are visited. */
  readonly isWanted?: (page: string) => boolean;
  /** Decides by the first outcome of a page whether the page is visited a second time. The second visit counts. */
  readonly isAgain?: (outcome: Outcome) => boolean;
}

/**
 * Visits the saved pages of a folder (`NAME.html`) one after the other. Reports each visit as soon as it is done. The
 * story of a page is in `expected/NAME.txt`, if the folder has this file.
 */
export async function sweepFolder(
  folder: string,
  browser: SweepBrowser,
  onOutcome: (outcome: Outcome) => void,
  { isWanted = () => true, isAgain = () => false }: SweepChoices = {},
): Promise<Outcome[]> {
  const pages = readdirSync(folder)
    .filter((file) => file.endsWith('.html'))
    .map((file) => file.replace(/\.html$/, ''))
    .filter(isWanted)
    .sort();
  const server = await serveFolder(folder);
  const outcomes: Outcome[] = [];
  try {
    for (const page of pages) {
      const visit = (): Promise<Outcome> =>
        within(browser.visit(`${server.root}${page}.html`)).then(
          (visit) => scoreVisit(page, visit, readExpected(folder, page)),
          (error: unknown): Outcome => ({
            page,
            faults: [`the visit failed: ${error instanceof Error ? error.message : String(error)}`],
            visit: null,
            recall: null,
            precision: null,
          }),
        );
      let outcome = await visit();
      if (isAgain(outcome)) {
        onOutcome(outcome);
        outcome = await visit();
      }
      outcomes.push(outcome);
      onOutcome(outcome);
    }
  } finally {
    server.stop();
  }
  return outcomes;
}

function within(visit: Promise<Visit>): Promise<Visit> {
  let timer: ReturnType<typeof setTimeout>;
  const late = new Promise<never>((_, reject) => {
    timer = setTimeout(() => reject(new Error(`nothing after ${LONGEST} ms`)), LONGEST);
  });
  return Promise.race([visit, late]).finally(() => clearTimeout(timer));
}

function readExpected(folder: string, page: string): string | null {
  const file = join(folder, 'expected', `${page}.txt`);
  return existsSync(file) ? readFileSync(file, 'utf8') : null;
}
