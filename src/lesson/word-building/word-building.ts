import { catalogue, tokenize } from '../../analyze/index.ts';
import type { PatternId } from '../../analyze/types.ts';
import { patternLabel } from '../../marks/pattern-label.ts';
import { soundName } from '../../marks/sound-names.ts';
import { isForClass } from '../fit-words.ts';
import type { LessonInput } from '../lesson-input.ts';
import type { LessonBlock, PartMaker } from '../lesson-part.ts';
import { isMeaningTrueOf } from '../new-pattern/say-rule.ts';
import { numberChoice } from '../number-choice.ts';
import type { Picker } from '../picker.ts';
import { isPlain } from '../plain-words.ts';
import { affixMeanings, changeNames, changeRules, leRule } from './building-rules.ts';
import { builtWords, type TwoPartWord } from './built-words.ts';
import { wrongSpellings } from './wrong-spellings.ts';

/** The fewest words that make a list. */
const ENOUGH = 3;
const COUNTS = [4, 6, 8, 10, 12];

/** Words built from a base and an ending, a beginning, or another word; and whether the spelling changes. */
export const wordBuilding: PartMaker = {
  id: 'building',
  title: 'Building words',
  use: 'Pupils build words from a base and an ending, and say how the spelling changes.',
  choices(input) {
    const taught = listBuildable(input);
    return [
      {
        id: 'what',
        label: 'Pattern',
        options: taught.map((id) => ({ value: id, label: patternLabel(id) })),
        usual: taught[0] ?? '',
      },
      numberChoice('count', 'How many', COUNTS, 6),
      {
        id: 'wrong',
        label: 'Wrong spellings',
        options: [
          { value: 'key', label: 'on the key only' },
          { value: 'pupils', label: 'on the pupils’ sheet too' },
        ],
        usual: 'key',
      },
    ];
  },
  make(input, chosen, picker) {
    const what = chosen('what');
    const count = Number(chosen('count'));
    const words = wordsBuiltBy(what, input);
    if (words.length === 0) {
      return {
        blocks: [],
        says: 'There is nothing to build yet. This group can read too few words with a prefix, a suffix or two parts.',
      };
    }
    const picked = pickWords(words, input, count, picker);
    const blocks = [buildBlock(what, picked, input)];
    const change = changeBlock(what, input, count, chosen('wrong') === 'pupils', picker);
    if (change) blocks.push(change);
    return { blocks, says: null, made: { count: picked.length } };
  },
};

/**
 * Returns the patterns with which the group can build words. The patterns of this step come first, then earlier
 * patterns from the last step back. Patterns taught early come last, and so do patterns that only their letters make
 * readable (-teen).
 */
function listBuildable(input: LessonInput): PatternId[] {
  const { known, focus, judge, group, bank } = input;
  // The words are counted in one pass, because most words show two patterns: running shows doubling the consonant and
  // -ing.
  const counts = new Map<PatternId, number>();
  for (const { patterns, word, base } of builtWords(known)) {
    for (const id of patterns) {
      const count = counts.get(id) ?? 0;
      if (count < ENOUGH && isMeaningTrueOf(id, { word: word.word, base }, bank)) counts.set(id, count + 1);
    }
  }
  const step = (id: PatternId): number => {
    const taughtAt = judge.group.stepOf(id) ?? 0;
    return taughtAt <= group.step ? taughtAt : 0;
  };
  return [...counts]
    .flatMap(([id, count]) => (count >= ENOUGH && known.knows(id) ? [id] : []))
    .sort((a, b) => Number(focus.includes(b)) - Number(focus.includes(a)) || step(b) - step(a));
}

/** Returns words built by a pattern as its rule says: underwater, not understand; sixth, not warmth. */
function wordsBuiltBy(id: PatternId, { known, bank }: LessonInput): TwoPartWord[] {
  const all = builtWords(known).filter(
    ({ patterns, word: { word }, base }) =>
      patterns.includes(id) && isMeaningTrueOf(id, { word, base }, bank),
  );
  const ofClass = all.filter(({ base }) => isForClass(base, null, bank));
  return ofClass.length >= ENOUGH ? ofClass : all;
}

/**
 * Picks words of the passage first, then other words by frequency. The words are in order of difficulty, with short
 * words first.
 */
function pickWords(
  words: readonly TwoPartWord[],
  input: LessonInput,
  count: number,
  picker: Picker,
): TwoPartWord[] {
  const there = wordsOf(input);
  const inPassage = words.filter(({ word }) => there.has(word.word)).slice(0, count);
  const others = words.filter((word) => !inPassage.includes(word));
  const more = picker.pickEarly(others.slice(0, 60), count - inPassage.length);
  const byLength = (a: TwoPartWord, b: TwoPartWord): number => a.word.word.length - b.word.word.length;
  return [...inPassage, ...more].sort(byLength);
}

function buildBlock(what: PatternId, words: readonly TwoPartWord[], input: LessonInput): LessonBlock {
  const { affix } = words[0]!;
  const isSaid = words.every(({ affix }) => affix.kind === 'suffix' && /^(s|es|ed)$/.test(affix.text));
  const isChanged = words.some(({ affix }) => affix.change !== 'none');
  return {
    id: 'build',
    title: `Build words: ${patternLabel(what)}`,
    layout: 'table',
    note: ruleOf(what, words, input),
    columns: [
      { head: affix.kind === 'prefix' ? 'Letters' : 'Base', shows: 'both' },
      {
        head: affix.kind === 'suffix' ? 'Letters' : affix.kind === 'prefix' ? 'Base' : 'Word',
        shows: 'both',
      },
      { head: 'Word', shows: 'blank' },
      ...(isChanged ? [{ head: 'What changes', shows: 'key' as const }] : []),
      ...(isSaid ? [{ head: 'Ending says', shows: 'key' as const }] : []),
    ],
    rows: words.map(({ word, base, affix, sound }) => [
      ...(affix.kind === 'prefix' ? [`${affix.text} +`, base] : [base, `+ ${affix.text}`]),
      word.word,
      ...(isChanged ? [changeOf(base, affix)] : []),
      ...(isSaid ? [soundName(sound ?? '', input.known.style)] : []),
    ]),
  };
}

/** Returns the rule in a sentence, with a word that follows the rule and a word that does not. */
function ruleOf(what: PatternId, words: readonly TwoPartWord[], { known, bank }: LessonInput): string {
  const { affix } = words[0]!;
  const all = builtWords(known);
  const show = ({ base, affix, word }: TwoPartWord): string =>
    affix.kind === 'prefix'
      ? `${affix.text} + ${base} = ${word.word}`
      : `${base} + ${affix.text} = ${word.word}`;
  if (affix.kind === 'compound') return `Two words written as one: ${show(words[0]!)}.`;
  if (what.startsWith('change-')) {
    const unchanged = all.filter(
      (built) =>
        built.affix.kind === 'suffix' && built.affix.change === 'none' && built.word.standing !== 'by-sight',
    );
    const other =
      unchanged.find((built) => isNearMiss(built, affix)) ??
      unchanged.find((built) => built.affix.text === affix.text);
    return `${changeRules[affix.change]} ${show(words[0]!)}${other ? `; but ${show(other)}` : ''}.`;
  }
  const letters = lettersOf(what);
  const name = affix.kind === 'prefix' ? `${letters}-` : `-${letters}`;
  const changed = words.find((built) => built.affix.change !== 'none');
  const meaning = affixMeanings[name] ?? `${name} is added to a base.`;
  const rule =
    changed && (isLeBeforeLy(changed.base, changed.affix) ? leRule : changeRules[changed.affix.change]);
  const change = changed ? ` ${rule} ${show(changed)}.` : '';
  // A word that only ends alike: the s of bus is no ending. The word has one syllable, so that it is plainly no base
  // with an addition.
  const alike = known.words.find(
    ({ word, reading, homograph, standing }) =>
      !homograph &&
      standing !== 'by-sight' &&
      reading.base === null &&
      reading.syllables.length === 1 &&
      isPlain(word, null, bank) &&
      word.length > letters.length + 1 &&
      (affix.kind === 'prefix' ? word.startsWith(letters) : word.endsWith(letters)) &&
      !/ss$/.test(word),
  );
  const not = alike ? ` But the ${letters} of ${alike.word} is no ${affix.kind}.` : '';
  const plain = words.find((built) => built.affix.change === 'none');
  const shown = plain ? ` ${show(plain)}.` : '';
  return `${meaning}${shown}${not}${change}`;
}

function changeOf(base: string, affix: TwoPartWord['affix']): string {
  return isLeBeforeLy(base, affix) ? 'drop -le' : changeNames[affix.change];
}

/** simple + ly makes simply; whole + ly loses the e alone. */
function isLeBeforeLy(base: string, { text, change }: TwoPartWord['affix']): boolean {
  return text === 'ly' && change !== 'none' && /[^aeiou]le$/.test(base);
}

/** Returns whether a base looks as if it would change too, but does not: playing, hopeful, helping. */
function isNearMiss(
  { base, affix: { text } }: TwoPartWord,
  { change, text: asked }: TwoPartWord['affix'],
): boolean {
  if (change === 'y-to-i') return base.endsWith('y');
  if (change === 'drop-e') return /[^aeiou]e$/.test(base) && /^[^aeiouy]/.test(text) && text !== 's';
  return text === asked && /[aeiou][^aeiou]{2}$/.test(base);
}

/** Returns a block that mixes words whose spelling changes, by the changes taught, with words whose spelling does not. */
function changeBlock(
  what: PatternId,
  { known, focus, analyzer }: LessonInput,
  count: number,
  onSheet: boolean,
  picker: Picker,
): LessonBlock | null {
  const suffixed = builtWords(known).filter(
    ({ affix }) =>
      affix.kind === 'suffix' && /^(ing|ed|er|est|y|es|ly|ful|less|ness|en|able)$/.test(affix.text),
  );
  const isAsked = ({ patterns }: TwoPartWord): boolean =>
    what.startsWith('change-') ? patterns.includes(what) : patterns.some((id) => id.startsWith('change-'));
  const changed = suffixed.filter(isAsked);
  if (
    changed.length < ENOUGH ||
    !(what.startsWith('change-') || focus.includes(what) || what.startsWith('suffix-'))
  )
    return null;
  const half = Math.ceil(count / 2);
  const same = suffixed.filter(({ affix }) => affix.change === 'none');
  const rows = picker.shuffle([
    ...picker.pickEarly(changed.slice(0, 60), half),
    ...picker.pickEarly(same.slice(0, 80), count - half),
  ]);
  const isWord = (spelling: string): boolean => analyzer.analyze(spelling).usage !== null;
  return {
    id: onSheet ? 'which' : 'change',
    title: onSheet ? 'Which is correct?' : 'Does it change?',
    layout: 'table',
    note: onSheet
      ? 'One word in each row is spelt correctly.'
      : 'Ask each time: does the base change before the suffix?',
    columns: [
      { head: 'Base', shows: 'both' },
      { head: 'Letters', shows: 'both' },
      ...(onSheet ? [{ head: 'Choose', shows: 'both' as const }] : []),
      { head: 'Word', shows: 'blank' },
      { head: 'What changes', shows: 'key' },
      ...(onSheet ? [] : [{ head: 'Wrong spelling', shows: 'key' as const }]),
    ],
    rows: rows.map(({ word, base, affix }) => {
      const wrong = wrongSpellings(base, affix, word.word, isWord);
      const offered = picker.shuffle([word.word, ...wrong.slice(0, 2)]).join('\u2003');
      return [
        base,
        `+ ${affix.text}`,
        ...(onSheet ? [offered] : []),
        word.word,
        changeOf(base, affix),
        ...(onSheet ? [] : [wrong.join(', ')]),
      ];
    }),
  };
}

function wordsOf({ passage }: LessonInput): ReadonlySet<string> {
  const text = passage?.text ?? '';
  return new Set(tokenize(text).map(({ start, end }) => text.slice(start, end).toLowerCase()));
}

const lettersById = new Map(catalogue.map(({ id, letters }) => [id, letters.split(' ')[0]!]));

function lettersOf(id: PatternId): string {
  return lettersById.get(id) ?? '';
}
