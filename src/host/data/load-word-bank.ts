import { openWordBank, type WordBank } from '../../lesson/index.ts';
import { browser } from '../browser.ts';

let bank: Promise<WordBank> | undefined;

/** The words lessons are made of, from the package; loaded once, when a lesson is first made. */
export function loadWordBank(): Promise<WordBank> {
  bank ??= fetch(browser.runtime.getURL('data/lesson-words.tsv'))
    .then((answer) => answer.text())
    .then(openWordBank);
  bank.catch(() => {
    bank = undefined;
  });
  return bank;
}
