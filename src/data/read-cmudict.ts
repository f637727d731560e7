import { dictionary } from 'cmu-pronouncing-dictionary';

/**
 * Reads the CMU Pronouncing Dictionary. Maps each headword in lower case to its pronunciations in the listed order.
 * Each pronunciation is a list of ARPAbet phones with stress digits (`bus` to `[['B','AH1','S']]`).
 *
 * The package has the second pronunciation under `word(2)` and comments (`# name, danish`) inside the string. Such
 * pronunciations are added to the headword, and comments are dropped.
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
