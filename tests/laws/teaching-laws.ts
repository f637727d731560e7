import { readdirSync, readFileSync } from 'node:fs';
import { catalogue } from '../../src/analyze/catalogue/catalogue.ts';
import { compileGroup } from '../../src/analyze/standing/compile-group.ts';
import { createJudge } from '../../src/analyze/standing/judge.ts';
import { parseSequence } from '../../src/analyze/standing/parse-sequence.ts';
import type { GroupOptions } from '../../src/analyze/types.ts';
import { groupOf } from '../fakes/group.ts';
import type { Breach, Law } from './law.ts';
import { analyzer, lessonWords, shortenedWords } from './lesson-words.ts';

const folder = new URL('../../profiles/sequences/', import.meta.url);
const starters = readdirSync(folder).map((file) =>
  parseSequence(JSON.parse(readFileSync(new URL(file, folder), 'utf8'))),
);
const OPTIONS: readonly GroupOptions[] = [
  {},
  { schwa: 'strict', syllableTypes: 'counted', wh: 'free', divisions: 'counted', endings: 'units' },
];
const READABLE = /^(reads|fresh|by-sight)$/;
const words = [...lessonWords, ...shortenedWords];

/**
 * A further step never makes a word unreadable. The law checks each starter sequence, with the usual options and with
 * strict options.
 */
export function teachingMoreTakesNothingAway(): Law {
  const breaches: Breach[] = [];
  let looked = 0;
  for (const sequence of starters) {
    for (const options of OPTIONS) {
      const read = new Set<string>();
      for (let step = 0; step <= sequence.steps.length; step += 4) {
        const group = groupOf({ sequence: sequence.id, step, options });
        const judge = createJudge({ analyze }, compileGroup(group, sequence));
        for (const { word } of words) {
          looked++;
          const reads = READABLE.test(judge(word).standing);
          if (reads) read.add(word);
          else if (read.has(word)) breaches.push({ key: word, found: `${sequence.id}, step ${step}` });
        }
      }
    }
  }
  return { id: 'teaching', says: 'teaching more never takes a word away', looked, breaches };
}

/** Known words by their letters, so that a word is not analysed again at every step. */
const known = new Map(words.map((analysis) => [analysis.word, analysis]));
const analyze = (word: string) => known.get(word) ?? analyzer.analyze(word);

/** The patterns that join words, and the v of leaves. */
const JOINING = catalogue.filter(
  ({ id, family }) =>
    family === 'suffix' || family === 'spelling change' || /^(compound|contraction|v)$/.test(id),
);

/**
 * A group may know the parts of a word by sight, with only the joining patterns taught. The group then reads the
 * compound, short form or inflected form: into, today, something, couldn't, you're.
 */
export function partsBySightRead(): Law {
  const made = words.filter(({ readings }) => {
    const outer = readings[0]!.affixes.at(-1);
    const inflected = outer?.kind === 'suffix' && /^(s|es|ed|ing|er|est)$/.test(outer.text);
    return outer?.kind === 'compound' || outer?.kind === 'contraction' || inflected;
  });
  const breaches = made.flatMap(({ word, readings }): Breach[] => {
    const parts = readings.flatMap(({ madeOf }) => madeOf?.parts.map((part) => part.word) ?? []);
    const group = groupOf({
      bySight: parts,
      alsoTaught: JOINING.map(({ id }) => id),
      options: { schwa: 'taught' },
    });
    const { standing, missing } = createJudge({ analyze }, compileGroup(group, null))(word);
    return READABLE.test(standing) ? [] : [{ key: word, found: missing.join(' ') }];
  });
  return { id: 'by-sight', says: 'a word made of by-sight words reads', looked: made.length, breaches };
}
