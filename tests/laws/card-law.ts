import { speechOf } from '../../src/analyze/index.ts';
import { review } from '../../src/lesson/review/review.ts';
import { soundName } from '../../src/marks/sound-names.ts';
import { makeOf } from '../lesson/check-sheet.ts';
import { lessonInput, sequences } from '../lesson/load-lesson.ts';
import { loadAnalyzer } from '../load-analyzer.ts';
import type { Breach, Law } from './law.ts';

/**
 * A card with letters to say also shows a word that has the letters. The sound on the card is the sound of the letters
 * in this word (the al of half), not the first sound of their row (the al of palm). The word is not a form of another
 * word, as halves is. The law checks every fourth step of each starter, since groups at different steps read different
 * words.
 */
export function cardsSayTheWord(): Law {
  const breaches: Breach[] = [];
  let looked = 0;
  for (const { id, accent = 'american', steps } of sequences) {
    const style = { accent, marks: 'dictionary' } as const;
    const spoken = loadAnalyzer().speaking(speechOf({ accent, options: {} }));
    for (let step = 4; step <= steps.length; step += 4) {
      const { blocks } = makeOf(review, lessonInput(id, step), step, { count: '20' });
      const cards = blocks.find((block) => block.id === 'letters')?.rows ?? [];
      for (const [letters = '', word = '', sound = ''] of cards) {
        looked++;
        const { units, affixes } = spoken.analyze(word).readings[0]!;
        const says = units.some((unit) => unit.letters === letters && soundName(unit.sound, style) === sound);
        if (!says || affixes.length > 0)
          breaches.push({ key: `${id}, step ${step}: ${letters}`, found: `${word} ${sound}` });
      }
    }
  }
  return { id: 'cards', says: 'a card says the sound its letters have in its word', looked, breaches };
}
