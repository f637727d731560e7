import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Outcome, scoreVisit } from './score-visit.ts';
import { serveFolder } from './serve-folder.ts';
import type { SweepBrowser, Visit } from './visit.ts';

/** A visit that takes longer is a fault, in milliseconds. */
const LONGEST = 40_000;

/**
 * Visits the saved pages of a folder (`NAME.html`; all, or those that `isWanted`) one after the other and tells of each as soon as it
 * is done. The story of a page is in `expected/NAME.txt`, where the folder has that.
 */
export async function sweepFolder(
  folder: string,
  browser: SweepBrowser,
  onOutcome: (outcome: Outcome) => void,
  isWanted: (page: string) => boolean = () => true,
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
      const outcome = await within(browser.visit(`${server.root}${page}.html`)).then(
        (visit) => scoreVisit(page, visit, readExpected(folder, page)),
        (error: unknown): Outcome => ({
          page,
          faults: [`the visit failed: ${error instanceof Error ? error.message : String(error)}`],
          visit: null,
          recall: null,
          precision: null,
        }),
      );
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
