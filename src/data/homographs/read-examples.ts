import { existsSync, readFileSync } from 'node:fs';
import { contextFeatures } from '../../analyze/homographs/context-features.ts';
import { readContext } from '../../analyze/homographs/read-context.ts';

/** One place of a homograph with the reading it has there. */
export interface Example {
  readonly word: string;
  /** As it stands, with what is around it. */
  readonly shown: string;
  readonly before: readonly string[];
  readonly after: readonly string[];
  readonly features: readonly string[];
  /** Index among the readings of the word in homographs.tsv; of a word that is not there, 1 for the verb. */
  readonly reading: number;
  /** Which reading is a verb, when the other is none. */
  readonly verb: number | undefined;
  /** The table has both readings: what is learnt of the word is kept. */
  readonly listed: boolean;
}

const source = new URL('../../../../shared/data/homographs_train.tsv', import.meta.url);
const VERB = 'verb';

/**
 * The sentences of the Wikipedia homograph data (Gorman, Mazovetskiy and Nikolaev 2018, training part), which are
 * not in this repository; null where they are not on this machine. labels.tsv tells which of its labels is which
 * reading. A word that is not there only teaches what verbs are like; places labelled otherwise are left out.
 */
export function readExamples(): Example[] | null {
  if (!existsSync(source)) return null;
  const labels = new Map(
    rowsOf(new URL('labels.tsv', import.meta.url)).map(([word, ...readings]) => [word!, readings]),
  );
  const rows = rowsOf(source);
  const seen = new Map<string, Set<string>>();
  for (const [, , , word, , label] of rows) seen.set(word!, (seen.get(word!) ?? new Set()).add(label!));

  return rows.flatMap(([sentence = '', start, end, word = '', , label = '']) => {
    const readings = labels.get(word) ?? otherWord(seen.get(word)!);
    const reading = readings?.indexOf(label) ?? -1;
    if (!readings || reading === -1) return [];
    const points = [...sentence];
    const from = points.slice(0, Number(start)).join('').length;
    const to = points.slice(0, Number(end)).join('').length;
    const shown = sentence.slice(from, to);
    const { before, after } = readContext(sentence, from, to);
    const verb = readings.indexOf(VERB);
    return {
      word,
      shown,
      before,
      after,
      features: contextFeatures(shown, before, after),
      reading,
      verb: verb === -1 ? undefined : verb,
      listed: labels.has(word),
    };
  });
}

function otherWord(labels: ReadonlySet<string>): string[] | null {
  const others = [...labels].filter((label) => label !== VERB);
  return others.length === 1 ? [others[0]!, VERB] : null;
}

function rowsOf(file: URL): string[][] {
  const [, ...lines] = readFileSync(file, 'utf8').trimEnd().split('\n');
  return lines.map((line) => line.split('\t'));
}
