import { dictionary } from 'cmu-pronouncing-dictionary';

/**
 * The CMU Pronouncing Dictionary: lower-case headword to all its pronunciations in the order listed,
 * each a list of ARPAbet phones with stress digits (`bus` to `[['B','AH1','S']]`).
 *
 * The package writes the second pronunciation under `word(2)` and keeps remarks (`# name, danish`)
 * inside the string; the first are gathered under the headword, the second dropped.
 */
export function readCmudict(): Map<string, string[][]> {
  const words = new Map<string, string[][]>();
  for (const [entry, text] of Object.entries(dictionary)) {
    const headword = entry.replace(/\(\d+\)$/, '').toLowerCase();
    const phones = text.replace(/#.*/, '').trim().split(/\s+/);
    const readings = words.get(headword);
    if (readings) readings.push(phones);
    else words.set(headword, [phones]);
  }
  return words;
}
