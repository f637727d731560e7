import { readFileSync } from 'node:fs';
import {
  compileGroup,
  createAnalyzer,
  createJudge,
  openLexicon,
  parseGroup,
  tokenize,
} from '../src/analyze/index.ts';
import { CARD_LIMIT, measureCardOpening } from './card-opening.ts';
import { measureClimb } from './climb.ts';
import { measureBackground } from './cold-start.ts';
import { measureDeskTyping } from './desk-typing.ts';
import { measureFloor } from './floor.ts';
import { measureHighlighter } from './highlighter.ts';
import { HOSTILE_LIMIT, measureHostilePages } from './hostile-pages.ts';
import { measureLongPage } from './long-page.ts';
import { median } from './median.ts';
import { measureMemory } from './memory.ts';
import { startBenchBrowser } from './open-bench-page.ts';
import { measureShelf } from './shelf.ts';
import { measureSlowLaptop } from './slow-laptop.ts';
import { measureLibraries } from './text-libraries.ts';
import { measureVetMany } from './vet-many.ts';

/** Speed as ratios, so that one machine can be compared with another: each to the time of cutting the text into words. */
const article = readFileSync(new URL('../tests/pages/article.html', import.meta.url), 'utf8');
const text = article.replace(/<(script|style)[\s\S]*?<\/\1>|<[^>]*>/g, ' ').repeat(150);
const table = readFileSync(new URL('../public/data/lexicon.bin', import.meta.url));

const keys = tokenize(text).map(({ key }) => key);
const cutting = time(() => tokenize(text));
const opening = time(() => openLexicon(table));
const judging = time(() => {
  const group = compileGroup(parseGroup({ name: 'none', sequence: null }), null);
  const judge = createJudge(createAnalyzer(openLexicon(table)), group);
  for (const key of keys) judge(key);
});
const distinct = [...new Set(keys)];
const analysing = time(() => {
  const analyzer = createAnalyzer(openLexicon(table));
  for (const key of distinct) analyzer.analyze(key);
});

print('words', keys.length, `${distinct.length} distinct`);
print('cut into words', 1, `${perSecond(keys.length, cutting)} words/s`);
print('open the word table', opening / cutting, `${opening.toFixed(2)} ms`);
print('judge with a cold memory', judging / cutting, `${perSecond(keys.length, judging)} words/s`);
print('analyse the distinct words', analysing / cutting, `${perSecond(distinct.length, analysing)} words/s`);

const libraries = measureLibraries(20_000, 5);
for (const other of ['compromise', 'wink', 'syllable'] as const)
  print(
    `words a second beside ${other}`,
    libraries.warm / libraries[other],
    `${libraries.warm.toLocaleString('en')}; theirs ${libraries[other].toLocaleString('en')}; ${libraries.ours.toLocaleString('en')} with words analysed anew`,
  );

const bench = await startBenchBrowser();
for (const words of [1000, 10_000, 100_000, 1_000_000]) {
  const { floor, ours, drawing, first } = await measureFloor(bench, words, words > 100_000 ? 3 : 5);
  print(
    `shade ${words.toLocaleString('en')} words beside the floor`,
    ours / floor,
    `${ours.toFixed(1)} ms of the page's thread; floor ${floor.toFixed(1)}; first time ${first.toFixed(0)}; drawing ${drawing.toFixed(0)}`,
  );
}
const marks = await measureHighlighter(bench, 2000, 3);
for (const by of ['list', 'pattern'] as const) {
  print(
    `mark.js by ${by}, beside shading`,
    marks[by].shade / marks.ours.shade,
    `${marks[by].shade.toFixed(0)} ms and ${marks[by].added} elements more; ours ${marks.ours.shade.toFixed(0)} and ${marks.ours.added}`,
  );
  print(
    `mark.js by ${by}, beside shading anew`,
    marks[by].reshade / marks.ours.reshade,
    `${marks[by].reshade.toFixed(0)} ms; ours ${marks.ours.reshade.toFixed(0)}`,
  );
}
await bench.close();

const background = await measureBackground(7);
print(
  'answer of a stopped background',
  background.coldStart / background.bareFetch,
  `${background.coldStart.toFixed(0)} ms; reading the same files ${background.bareFetch.toFixed(0)}; a running one ${background.warm.toFixed(1)}`,
);

const card = await measureCardOpening(12);
print(
  'card, from the click until it is drawn',
  card.median / CARD_LIMIT,
  `${card.median.toFixed(0)} ms of ${CARD_LIMIT} allowed; least ${card.least.toFixed(0)}`,
);

const climb = measureClimb();
print(
  'climb of 100,000 words over 100 steps',
  climb.warm / climb.naive,
  `${climb.warm.toFixed(0)} ms; ${climb.naive.toFixed(0)} ms by judging at every step; ${climb.cold.toFixed(0)} ms with words analysed anew`,
);

const shelf = measureShelf();
const size = `${shelf.texts.toLocaleString('en')} texts, ${shelf.words.toLocaleString('en')} words`;
print(
  'rank a shelf for another group',
  shelf.anotherGroup / 100,
  `${shelf.anotherGroup.toFixed(0)} ms of 100 allowed; ${size}`,
);
print(
  'rank it for the group a step on',
  shelf.anotherStep / 100,
  `${shelf.anotherStep.toFixed(0)} ms of 100 allowed`,
);
print(
  'look up all its words, once',
  shelf.analysing / cutting,
  `${perSecond(shelf.words, shelf.analysing)} words/s`,
);

const many = await measureVetMany();
const [one, two] = many.running;
print(
  'vet files on two threads, to 1 million words/s',
  two / 1_000_000,
  `${two.toLocaleString('en')} words/s, ${one.toLocaleString('en')} on one; with the start ${many.whole[1].toLocaleString('en')}; ${many.megabytes} MB`,
);

const memory = await measureMemory();
const mb = (bytes: number): string => `${(bytes / 1e6).toFixed(1)} MB`;
print('memory of the background, to 15 MB', memory.background / 15e6, mb(memory.background));
print('memory of a tab with 10,000 words, to 5 MB', memory.tab / 5e6, mb(memory.tab));
print('what 80 pages more leave behind, to 1 MB', memory.growth / 1e6, mb(memory.growth));

for (const { what, longest } of await measureHostilePages())
  print(
    `longest task on ${what}`,
    longest / HOSTILE_LIMIT,
    `${longest.toFixed(0)} ms of ${HOSTILE_LIMIT} allowed`,
  );

const page = await measureLongPage();
print(
  'longest task on a page of 100,000 words',
  page.longest / 50,
  `${page.longest.toFixed(0)} ms of 50 allowed`,
);
print(
  'longest task while it is stopped',
  page.stopping / 50,
  `${page.stopping.toFixed(0)} ms: the browser's own pass over its styles`,
);
console.log(
  `  ${page.marked} words marked in ${(page.total / 1000).toFixed(1)} s; after stop the page is ${page.same ? 'as it was' : 'CHANGED'}`,
);

for (const { words, marked, longest, plain, shaded } of await measureSlowLaptop([4000, 20_000, 50_000]))
  print(
    `scroll ${words.toLocaleString('en')} shaded words at a sixth of the speed`,
    shaded.high / plain.high,
    `95th percentile of frames ${shaded.high.toFixed(0)} ms, plain ${plain.high.toFixed(0)}; first marks after ${marked.toFixed(0)}, longest task ${longest.toFixed(0)}`,
  );

const desk = await measureDeskTyping();
print(
  'work a key takes at the desk, 95th percentile',
  desk.work.high / 16,
  `${desk.work.high.toFixed(1)} ms of 16 allowed, median ${desk.work.median.toFixed(1)}; passage of 5,000 words`,
);
print(
  'key to shaded text, 95th percentile',
  desk.key.high / 16,
  `${desk.key.high.toFixed(1)} ms, median ${desk.key.median.toFixed(1)}; longest task ${desk.typing.toFixed(0)} ms`,
);
print(
  'longest task when 50,000 words are pasted',
  desk.pasting / 50,
  `${desk.pasting.toFixed(0)} ms; shaded after ${desk.shaded.toFixed(0)} ms, counted after ${desk.counted.toFixed(0)} ms`,
);

function time(work: () => unknown): number {
  const times = Array.from({ length: 5 }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  });
  return median(times);
}

function perSecond(count: number, milliseconds: number): string {
  return Math.round((count / milliseconds) * 1000).toLocaleString('en');
}

function print(what: string, ratio: number, figure: string): void {
  console.log(`${what.padEnd(42)} ${String(Math.round(ratio * 1000) / 1000).padStart(8)}   ${figure}`);
}
