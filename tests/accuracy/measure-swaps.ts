import { buildSwaps } from '../../src/data/swap/build-swaps.ts';
import { SOURCES, type Source } from '../../src/data/swap/gather-candidates.ts';
import { createSwapper, openSwaps, type Swapper } from '../../src/swap/index.ts';
import phrases from '../../src/swap/phrase-swaps.json' with { type: 'json' };
import { readSwapSentences, type SwapSentence } from './swap-sentences.ts';

/**
 * Measures how good the swaps are: `npx tsx tests/accuracy/measure-swaps.ts [--tune] [--misses] [--ablate]`. Uses the
 * sentences for tests, or with `--tune` the sentences for setting weights.
 * - `--misses`: lists the swaps that were missed.
 * - `--ablate`: measures with each source off in turn.
 */
const flags = new Set(process.argv.slice(2));
const sentences = readSwapSentences(flags.has('--tune') ? 'swap-tune' : 'swap-test');

const others = SOURCES.filter((each) => each !== 'own');
const tables: [string, ReadonlySet<Source>][] = [['all sources', new Set()]];
if (flags.has('--ablate')) {
  // Our own list contains nearly all words of these sentences, so the other sources are measured without it.
  tables.push(['own alone', new Set(others)], ['without own', new Set(['own'])]);
  for (const source of others) tables.push([`without own and ${source}`, new Set(['own', source])]);
}
console.log('sources\tfirst\tone of three\trecommended\trecommended and right');
for (const [name, off] of tables) {
  const swapper = createSwapper(openSwaps(buildSwaps(off).bytes), phrases);
  console.log([name, ...measure(swapper, sentences)].join('\t'));
  if (flags.has('--misses') && off.size === 0) listMisses(swapper);
}

function measure(swapper: Swapper, asked: readonly SwapSentence[]): string[] {
  let first = 0;
  let three = 0;
  let recommended = 0;
  let rightly = 0;
  for (const { sentence, start, end, right } of asked) {
    const { swaps, best } = swapper.findSwaps(sentence, start, end);
    const good = swaps.map(({ text }) => right.includes(text.toLowerCase()));
    if (good[0]) first++;
    if (good.slice(0, 3).includes(true)) three++;
    if (best > 0) recommended++;
    if (best > 0 && good[0]) rightly++;
  }
  const percent = (part: number, whole: number): string => `${((100 * part) / whole).toFixed(1)} %`;
  return [
    percent(first, asked.length),
    percent(three, asked.length),
    percent(recommended, asked.length),
    percent(rightly, recommended),
  ];
}

function listMisses(swapper: Swapper): void {
  for (const { sentence, start, end, right } of sentences) {
    const { word, swaps, best } = swapper.findSwaps(sentence, start, end);
    if (right.includes(swaps[0]?.text.toLowerCase() ?? '')) continue;
    const got = swaps.slice(0, 6).map(({ text, score }) => `${text} ${score}`);
    console.log(`${word}\t${best}\t${got.join(', ')}\t(${right.slice(0, 4).join(', ')})`);
  }
}
