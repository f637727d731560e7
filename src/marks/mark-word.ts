import type { Reading, Unit } from '../analyze/types.ts';

/** A run of letters as a dictionary prints it. Affixes are separate from the base. */
export interface MarkedPart {
  /** The letters with middle dots, macrons and breves: `hōp·`. */
  readonly text: string;
  readonly affix: boolean;
}

const MACRON = '\u0304';
const BREVE = '\u0306';
/** The letters that give each long or short vowel sound its name. */
const LONG: Readonly<Record<string, string>> = { EY: 'a', IY: 'e', AY: 'iy', OW: 'o', UW: 'u' };
const SHORT: Readonly<Record<string, string>> = { AE: 'a', EH: 'e', IH: 'iy', AA: 'o', AH: 'u' };

/**
 * Marks a word as a dictionary does. Syllables are separated by middle dots. A letter that is pronounced like its name
 * gets a macron (hōp·ing, rāin), and a letter with its short sound gets a breve (rŭn·ning). Some letters stay plain:
 * weak vowels (about), vowels before r in one unit (car), and letters with another vowel's sound (said). If letters and
 * units do not fit together, only the syllables are shown.
 * @param shown The word as it is written, with its capitals.
 */
export function markWord(shown: string, { units, syllables }: Reading): MarkedPart[] {
  const dots = dotsAfter(shown, syllables);
  const letters = markLetters(shown, units) ?? [...shown].map((text) => ({ text, affix: false }));
  const parts: { text: string; affix: boolean }[] = [];
  for (const [i, { text, affix }] of letters.entries()) {
    const last = parts.at(-1);
    const dotted = dots.has(i + 1) ? `${text}·` : text;
    if (last?.affix === affix) last.text += dotted;
    else parts.push({ text: dotted, affix });
  }
  return parts.map(({ text, affix }) => ({ text: text.normalize('NFC'), affix }));
}

const THIN_SPACE = '\u2009';

/**
 * Returns a marked word as one text. An ending that is not a syllable gets a thin space before it: blōw s. An ending
 * that is a syllable gets no thin space: māk·er, not māk· er.
 */
export function markedText(shown: string, reading: Reading): string {
  let marked = '';
  for (const { text, affix } of markWord(shown, reading)) {
    const isApart = affix && /^(?:'?s|es|e?d)$/.test(text) && !marked.endsWith('·');
    marked += isApart ? THIN_SPACE + text : text;
  }
  return marked;
}

/** Removes the marks from a word: prē·pare becomes prepare. */
export function withoutMarks(text: string): string {
  return text
    .normalize('NFD')
    .replace(new RegExp(`[${MACRON}${BREVE}·]`, 'g'), '')
    .normalize('NFC');
}

/** Returns the number of letters before each dot. Returns an empty set if the syllables do not spell the word. */
function dotsAfter(shown: string, syllables: Reading['syllables']): Set<number> {
  if (syllables.map(({ text }) => text).join('') !== shown.toLowerCase()) return new Set();
  let at = 0;
  return new Set(syllables.slice(0, -1).map(({ text }) => (at += text.length)));
}

/** Returns one entry for each letter, or null if the units do not spell the word. */
function markLetters(shown: string, units: readonly Unit[]): MarkedPart[] | null {
  const word = shown.toLowerCase();
  const letters: MarkedPart[] = [];
  const add = (upTo: number, affix: boolean, marked = -1, mark = ''): void => {
    for (let i = letters.length; i < upTo; i++) {
      letters.push({ text: shown[i]! + (i === marked ? mark : ''), affix });
    }
  };
  for (const unit of units) {
    const spelt = unit.letters.replace(/_.*/, '');
    // The e of `a_e` comes later in the word, and no unit contains it there.
    if (!word.startsWith(spelt, letters.length) && word[letters.length] === 'e')
      add(letters.length + 1, false);
    const start = letters.length;
    if (!word.startsWith(spelt, start)) return null;
    const { letter, mark } = markOf(unit, spelt);
    add(start + spelt.length, unit.affix !== undefined, start + letter, mark);
  }
  if (word.slice(letters.length) === 'e') add(word.length, false);
  return letters.length === shown.length ? letters : null;
}

/** Returns the index of the marked letter in a unit, and its mark. The index is -1 if no letter is marked. */
function markOf({ sound }: Unit, spelt: string): { letter: number; mark: string } {
  const sounds = sound.split('.');
  const at = sounds.findIndex((one) => one in LONG || one in SHORT);
  const vowel = sounds[at];
  if (vowel !== undefined && sounds[at + 1] !== 'R') {
    const mark = vowel in LONG ? MACRON : BREVE;
    const named = LONG[vowel] ?? SHORT[vowel]!;
    const letter = [...spelt].findIndex((one) => named.includes(one));
    // In “you”, ou is pronounced as long oo, which differs from the name of the letter u. In “value”, ue is pronounced
    // like that name.
    if (letter >= 0 && (vowel !== 'UW' || !/[aeio]/.test(spelt.slice(0, letter)))) return { letter, mark };
  }
  return { letter: -1, mark: '' };
}
