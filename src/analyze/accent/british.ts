import { buildRecord, type FindBuilt } from '../build/build-word.ts';
import type { BuiltWord, WordSpelling } from '../build/built-word.ts';
import type { Lexicon } from '../lexicon/open-lexicon.ts';
import { readCorrespondence } from '../lexicon/read-correspondence.ts';
import type { ReadingRecord, TableWord } from '../lexicon/word-record.ts';
import { toBritish } from './british-rules.ts';
import { hearBritish } from './british-sounds.ts';
import type { Speech } from './speech.ts';

/** The parts that an analyser needs to apply British pronunciation to the American table. */
export interface British {
  /** The table with British pronunciation. Some words have British units of their own; the others are converted by rule. */
  readonly lexicon: Pick<Lexicon, 'find'>;
  readonly findAmerican: FindBuilt;
  /** Converts the American reading of a word that is missing from the table to British pronunciation. */
  say(word: string, built: BuiltWord): BuiltWord;
  /** Returns the sound heard for each spelling. */
  readonly hear: (built: BuiltWord) => readonly string[];
}

type AnyLexicon = Pick<Lexicon, 'find'> & Partial<Pick<Lexicon, 'findBritish'>>;

/**
 * Creates the British pronunciation of a table. The table's `findBritish` returns the facts about a word that no rule
 * can give.
 */
export function createBritish(american: AnyLexicon, { bath }: Speech): British {
  const ways = { broadBath: bath === 'father' };
  const known = new Map<string, readonly BuiltWord[]>();
  const findAmerican: FindBuilt = (word) => {
    const before = known.get(word);
    if (before) return before;
    const record = american.find(word);
    const built = record ? buildRecord(word, record, findAmerican) : [];
    if (known.size > CACHED_WORDS) known.clear();
    known.set(word, built);
    return built;
  };

  function sayRecord(word: string, found: TableWord): TableWord {
    const own = american.findBritish?.(word) ?? '';
    const owns = own.split(' / ');
    const ownUnits = own.includes(':') ? owns.map(readUnits) : [];
    const more = ownUnits
      .slice(found.readings.length)
      .map((units) => ({ kind: 'whole' as const, units, madeBy: null }));
    const readings = found.readings.map((reading, i): ReadingRecord => {
      const told = ownUnits[i];
      if (told) return { kind: 'whole', units: told, madeBy: 'madeBy' in reading ? reading.madeBy : null };
      if (reading.kind !== 'whole') return reading;
      const units = toBritish(word, markStress(reading.units, owns[i] ?? ''), ways);
      return units === reading.units ? reading : { ...reading, units };
    });
    return { ...found, readings: [...readings, ...more] };
  }

  return {
    lexicon: {
      find(word) {
        const found = american.find(word);
        return found && sayRecord(word, found);
      },
    },
    findAmerican,
    say: (word, built) => ({
      ...built,
      parts: built.parts.map((part) =>
        part.role === 'base' ? { ...part, spellings: toBritish(word, part.spellings, ways) } : part,
      ),
    }),
    hear: hearBritish,
  };
}

/**
 * Upper limit of the cache of American readings. The limit can be low, because unlisted words are compared with few
 * words.
 */
const CACHED_WORDS = 2_000;

/**
 * Marks the sounds of er from a text such as `2w 4f`: the er of the third unit is weak, and the er of the fifth is
 * full.
 */
function markStress(units: readonly WordSpelling[], marks: string): readonly WordSpelling[] {
  if (marks === '' || marks.includes(':')) return units;
  const heard = new Map(marks.split(' ').map((mark) => [Number.parseInt(mark, 10), mark.endsWith('w')]));
  return units.map((unit, i) => {
    const weak = heard.get(i);
    if (weak === undefined) return unit;
    return { ...unit, heard: weak ? 'AX' : unit.sound === 'ER' ? 'ER' : 'EA' };
  });
}

/**
 * Reads units from a text such as `t:T o:AX m:M a:AA t:T o:OW`. The a of `a:AH=AA` is named by the sound AH and heard
 * as AA.
 */
function readUnits(text: string): WordSpelling[] {
  return text.split(' ').map((one): WordSpelling => {
    const [spelling, heard] = one.split('=') as [string, string | undefined];
    return { ...readCorrespondence(spelling), ...(heard !== undefined && { heard }) };
  });
}
