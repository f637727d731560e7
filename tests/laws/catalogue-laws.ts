import { catalogue } from '../../src/analyze/catalogue/catalogue.ts';
import type { Pattern } from '../../src/analyze/types.ts';
import type { Breach, Law } from './law.ts';
import { analyzer, lessonWords } from './lesson-words.ts';

/** Every key word and example needs the row it stands for. */
export function examplesNeedTheirRow(): Law {
  const breaches: Breach[] = [];
  let looked = 0;
  for (const { id, examples, keyWord } of catalogue) {
    for (const word of new Set([...examples, ...(keyWord ? [keyWord] : [])])) {
      looked++;
      const { readings } = analyzer.analyze(word);
      if (readings.some(({ requires }) => requires.includes(id))) continue;
      breaches.push({ key: `${id}:${word}`, found: readings[0]!.requires.join(' ') });
    }
  }
  return { id: 'examples', says: 'every key word and example needs its row', looked, breaches };
}

/** Every row is needed by a word of the lesson list. */
export function rowsAreNeeded(): Law {
  const needed = new Set(lessonWords.flatMap(({ readings }) => readings.flatMap(({ requires }) => requires)));
  const breaches = catalogue
    .filter(({ id }) => !needed.has(id))
    .map(({ id, label }) => ({ key: id, found: label }));
  return { id: 'rows', says: 'every row is needed by a listed word', looked: catalogue.length, breaches };
}

const LETTER_ROWS = /vowel|consonant|digraph|soft|silent|schwa|final syllable/;

/** A card shows a row's first letters and first sound beside its key word: that word has to say them. */
export function keyWordsSayTheirSound(): Law {
  const rows = catalogue.filter(({ family, keyWord }) => LETTER_ROWS.test(family) && keyWord);
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

/** The weak i is shown as i is. */
function soundOf({ sounds }: Pattern): string[] {
  return [sounds[0]!, sounds[0]!.replaceAll('IX', 'IH')];
}
