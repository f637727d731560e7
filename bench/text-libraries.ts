import { readFileSync } from 'node:fs';
import nlp from 'compromise';
import { syllable } from 'syllable';
import model from 'wink-eng-lite-web-model';
import winkNlp from 'wink-nlp';
import {
  compileGroup,
  createAnalyzer,
  createJudge,
  openLexicon,
  parseGroup,
  parseSequence,
  tokenize,
} from '../src/analyze/index.ts';
import { median } from './median.ts';
import { writePage } from './write-page.ts';

/** Running words per second, as medians. */
export interface LibrarySpeeds {
  /** Words with their readings in the sentence and their standings for a group. The words are analysed anew each time. */
  readonly ours: number;
  /** The same with words met before, as in any text after the first. */
  readonly warm: number;
  /** compromise and wink-nlp: tokens with parts of speech. */
  readonly compromise: number;
  readonly wink: number;
  /** syllable: a count of syllables for each word. The words are cut by our code beforehand. */
  readonly syllable: number;
}

/** Runs general text libraries on the same text. Each library does the lighter job that it is made for. */
export function measureLibraries(words: number, runs: number): LibrarySpeeds {
  const text = writePage(words)
    .replace(/<\/(?:p|h2)>/g, '\n\n')
    .replace(/<[^>]*>/g, '');
  const lexicon = openLexicon(readFileSync(new URL('../public/data/lexicon.bin', import.meta.url)));
  const sequence = parseSequence(
    JSON.parse(readFileSync(new URL('../profiles/sequences/steady-steps.json', import.meta.url), 'utf8')),
  );
  const group = compileGroup(parseGroup({ name: 'Herons', sequence: sequence.id, step: 12 }), sequence);
  const judgeAll = (judge: ReturnType<typeof createJudge>): number =>
    tokenize(text).filter(({ kind, key }) => kind === 'word' && judge(key).standing === 'beyond').length;
  const warm = createJudge(createAnalyzer(lexicon), group);
  judgeAll(warm);
  const wink = winkNlp(model);
  const keys = tokenize(text).map(({ key }) => key);
  const speed = (work: () => unknown): number => {
    const times = Array.from({ length: runs }, () => {
      const start = performance.now();
      work();
      return performance.now() - start;
    });
    return Math.round((words / median(times)) * 1000);
  };
  return {
    ours: speed(() => judgeAll(createJudge(createAnalyzer(lexicon), group))),
    warm: speed(() => judgeAll(warm)),
    compromise: speed(() => nlp(text).json({ terms: { normal: true, tags: true } })),
    wink: speed(() => wink.readDoc(text).tokens().out(wink.its.pos)),
    syllable: speed(() => keys.reduce((sum, key) => sum + syllable(key), 0)),
  };
}
