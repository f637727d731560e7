import { catalogue } from '../../src/analyze/catalogue/catalogue.ts';
import { soundsIn } from '../../src/analyze/index.ts';
import type { FineNeeds, Pattern, PatternId, Reading } from '../../src/analyze/types.ts';
import type { Breach, Law } from './law.ts';
import { accent, analyzer, lessonWords, shortenedWords } from './lesson-words.ts';

/** Every key word and every example needs the pattern of its own row. */
export function examplesNeedTheirRow(): Law {
  const breaches: Breach[] = [];
  let looked = 0;
  for (const { id, examples, keyWord } of catalogue) {
    for (const word of new Set([...examples, ...(keyWord ? [keyWord] : [])])) {
      looked++;
      const { readings } = analyzer.analyze(word);
      if (readings.some((reading) => rowsOf(reading).includes(id))) continue;
      breaches.push({ key: `${id}:${word}`, found: readings[0]!.requires.join(' ') });
    }
  }
  return { id: 'examples', says: 'every key word and example needs its row', looked, breaches };
}

/** Returns all rows that a reading needs: the rows that count for every group, and the finer rows. */
function rowsOf({ requires, fine }: Reading): PatternId[] {
  return [...requires, ...(fine?.finer.map(({ row }) => row) ?? [])];
}

/** Every row is needed by at least one word of the lesson list. */
export function rowsAreNeeded(): Law {
  const needed = new Set(lessonWords.flatMap(({ readings }) => readings.flatMap(rowsOf)));
  const breaches = catalogue
    .filter(({ id }) => !needed.has(id))
    .map(({ id, label }) => ({ key: id, found: label }));
  return { id: 'rows', says: 'every row is needed by a listed word', looked: catalogue.length, breaches };
}

const LETTER_ROWS = /vowel|consonant|digraph|soft|silent|schwa|final syllable/;

/**
 * A card shows a row's first letters and first sound beside its key word. The key word must therefore have these
 * letters with this sound.
 */
export function keyWordsSayTheirSound(): Law {
  const rows = catalogue.filter(
    ({ family, keyWord, finer }) => LETTER_ROWS.test(family) && keyWord && !finer,
  );
  const breaches = rows.flatMap((row): Breach[] => {
    const units = analyzer
      .analyze(row.keyWord)
      .readings.flatMap((reading) => reading.units.filter(({ pattern }) => pattern === row.id));
    const says = units.some(
      ({ letters, sound }) => letters === lettersOf(row) && soundOf(row).includes(sound),
    );
    const found = units.map(({ letters, sound }) => `${letters}:${sound}`).join(' ');
    return says ? [] : [{ key: row.id, found: `${row.keyWord} has ${found || 'no such unit'}` }];
  });
  return {
    id: 'key-words',
    says: 'a key word says the first letters and sound of its row',
    looked: rows.length,
    breaches,
  };
}

function lettersOf({ letters }: Pattern): string {
  return letters.split(' ')[0]!;
}

/** The weak i is shown like the full i. */
function soundOf(row: Pattern): string[] {
  const sounds = soundsIn(row, accent);
  return [sounds[0]!, sounds[0]!.replaceAll('IX', 'IH')];
}

/** The key word of an ending that may be taught as a unit must contain the ending's letters and sounds in order. */
export function endingsAreInTheirKeyWords(): Law {
  const rows = catalogue.filter(({ finer, letters, sounds }) => finer && letters && sounds.length > 0);
  const breaches = rows.flatMap((row): Breach[] => {
    const says = analyzer.analyze(row.keyWord).readings.some(({ units }) =>
      units.some((_, from) =>
        units.some((_, to) => {
          const some = units.slice(from, to + 1);
          const letters = some.map((unit) => unit.letters).join('');
          const sound = some.map((unit) => unit.sound).join('.');
          return letters === lettersOf(row) && soundOf(row).includes(sound);
        }),
      ),
    );
    return says ? [] : [{ key: row.id, found: row.keyWord }];
  });
  return {
    id: 'endings',
    says: 'a key word says the letters and sounds of its ending',
    looked: rows.length,
    breaches,
  };
}

/**
 * The needs of a word with finer rows equal its ordinary needs, once each finer row is replaced by the ordinary rows in
 * its place. A group that names no finer row therefore reads the same words as before finer rows existed.
 */
export function finerRowsAddNothing(): Law {
  const words = [...lessonWords, ...shortenedWords];
  const breaches: Breach[] = [];
  let looked = 0;
  const check = (key: string, requires: readonly PatternId[], fine: FineNeeds | undefined): void => {
    if (!fine) return;
    looked++;
    const told = [...new Set([...fine.rest, ...fine.finer.flatMap(({ of }) => of)])].sort();
    if (told.join() !== [...requires].sort().join()) breaches.push({ key, found: told.join(' ') });
  };
  for (const { word, readings } of words) {
    for (const { requires, fine, madeOf } of readings) {
      check(word, requires, fine);
      if (!madeOf) continue;
      check(`${word}, its joint`, madeOf.joint, madeOf.fineJoint);
      for (const part of madeOf.parts) check(`${word}, ${part.word}`, part.requires, part.fine);
    }
  }
  return { id: 'finer', says: 'finer rows add nothing for a group that names none', looked, breaches };
}
