import { catalogue } from '../../src/analyze/catalogue/catalogue.ts';
import { compileGroup } from '../../src/analyze/standing/compile-group.ts';
import { createJudge } from '../../src/analyze/standing/judge.ts';
import { groupOf } from '../fakes/group.ts';
import { type Breach, type Law, readExceptions } from './law.ts';
import { analyzer, lessonWords } from './lesson-words.ts';

/** The largest allowed number of irregular words. A longer list would hide faults of the engine. */
export const MOST_IRREGULAR = 250;

/**
 * A group that was taught everything, and knows the reviewed irregular words by sight, reads every lesson word. A word
 * built from irregular words needs no line of its own in the reviewed file. A listed word that the group reads without
 * its line is a breach too.
 */
export function everythingTaughtReads(): Law {
  const listed = readExceptions('irregular');
  const everything = { alsoTaught: catalogue.map(({ id }) => id), options: { schwa: 'taught' as const } };
  const judgeWith = (bySight: readonly string[]) =>
    createJudge(analyzer, compileGroup(groupOf({ ...everything, bySight: [...bySight] }), null));
  const withList = judgeWith([...listed.keys()]);
  // The base of a lesson word may itself be missing from the lesson words, for example acquaint, the base of
  // acquainted.
  const lessons = new Set(lessonWords.map(({ word }) => word));
  const bases = [...listed.keys()].filter((word) => !lessons.has(word)).map((word) => analyzer.analyze(word));
  const breaches = [...lessonWords, ...bases].flatMap(({ word, readings }): Breach[] => {
    const { standing } = withList(word);
    if (standing !== 'beyond' && standing !== 'unsure' && !listed.has(word)) return [];
    const others = judgeWith([...listed.keys()].filter((other) => other !== word));
    if (listed.has(word) && /reads|by-sight/.test(others(word).standing)) return [];
    return [{ key: word, found: irregularLetters(readings[0]!.units) }];
  });
  return {
    id: 'irregular',
    says: 'a group that was taught everything reads all but the irregular words',
    looked: lessonWords.length,
    breaches,
  };
}

function irregularLetters(units: readonly { letters: string; sound: string; pattern: string }[]): string {
  return units
    .filter(({ pattern }) => pattern === 'irregular')
    .map(({ letters, sound }) => `${letters}:${sound}`)
    .join(' ');
}
