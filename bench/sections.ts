import { readFileSync } from 'node:fs';
import {
  compileGroup,
  createAnalyzer,
  createJudge,
  openLexicon,
  parseGroup,
  tokenize,
} from '../src/analyze/index.ts';
import { CARD_LIMIT, measureCardOpening, SLOW_CARD_LIMIT } from './card-opening.ts';
import { measureClimb } from './climb.ts';
import { measureBackground } from './cold-start.ts';
import { measureDeskPlan } from './desk-plan.ts';
import { measureDeskTyping } from './desk-typing.ts';
import type { Figure, Section } from './figure.ts';
import { growthOf, measureFloor } from './floor.ts';
import { measureHighlighter } from './highlighter.ts';
import { HOSTILE_LIMIT, measureHostilePages } from './hostile-pages.ts';
import { measureJudgingAnew } from './judging-anew.ts';
import { measureLongPage } from './long-page.ts';
import { median } from './median.ts';
import { measureMemory } from './memory.ts';
import { startBenchBrowser } from './open-bench-page.ts';
import { measureShelf } from './shelf.ts';
import { measureSlowLaptop, SLOWER, slowPages } from './slow-laptop.ts';
import { measureLibraries } from './text-libraries.ts';
import { FILE_SIZES, measureVetMany } from './vet-many.ts';

/** Everything that the bench measures, in the order of printing. */
export const SECTIONS: readonly Section[] = [
  { name: 'engine', measure: measureEngine },
  { name: 'libraries', measure: measureBesideLibraries },
  { name: 'floor', measure: measureBesideFloor },
  { name: 'highlighter', measure: measureBesideHighlighter },
  { name: 'background', measure: measureAnswer },
  { name: 'card', measure: measureCards },
  { name: 'anew', measure: measureAnew },
  { name: 'climb', measure: measureClimbing },
  { name: 'shelf', measure: measureRanking },
  { name: 'vet', measure: measureVetting },
  { name: 'memory', measure: measureBytes },
  { name: 'hostile', measure: measureHostile },
  { name: 'long', measure: measureLong },
  { name: 'laptop', measure: measureLaptop },
  { name: 'desk', measure: measureDesk },
  { name: 'plan', measure: measurePlan },
];

async function measureEngine(): Promise<Figure[]> {
  const article = readFileSync(new URL('../tests/pages/article.html', import.meta.url), 'utf8');
  const text = article.replace(/<(script|style)[\s\S]*?<\/\1>|<[^>]*>/g, ' ').repeat(150);
  const table = readFileSync(new URL('../public/data/lexicon.bin', import.meta.url));
  const keys = tokenize(text).map(({ key }) => key);
  const distinct = [...new Set(keys)];
  const cutting = time(() => tokenize(text));
  const opening = time(() => openLexicon(table));
  const judging = time(() => {
    const group = compileGroup(parseGroup({ name: 'none', sequence: null }), null);
    const judge = createJudge(createAnalyzer(openLexicon(table)), group);
    for (const key of keys) judge(key);
  });
  const analysing = time(() => {
    const analyzer = createAnalyzer(openLexicon(table));
    for (const key of distinct) analyzer.analyze(key);
  });
  return [
    { what: 'words', ratio: keys.length, note: `${distinct.length} distinct` },
    { what: 'cut into words', ratio: 1, note: perSecond(keys.length, cutting) },
    { what: 'open the word table', ratio: opening / cutting, note: `${opening.toFixed(2)} ms` },
    {
      what: 'judge with a cold memory',
      ratio: judging / cutting,
      note: perSecond(keys.length, judging),
    },
    {
      what: 'analyse the distinct words',
      ratio: analysing / cutting,
      note: perSecond(distinct.length, analysing),
    },
  ];
}

async function measureBesideLibraries(): Promise<Figure[]> {
  const libraries = measureLibraries(20_000, 5);
  return (['compromise', 'wink', 'syllable'] as const).map((other) => ({
    what: `words a second beside ${other}`,
    ratio: libraries.warm / libraries[other],
    note: `${libraries.warm.toLocaleString('en')}; theirs ${libraries[other].toLocaleString('en')}; ${libraries.ours.toLocaleString('en')} with words analysed anew`,
    least: 5,
  }));
}

async function measureBesideFloor(): Promise<Figure[]> {
  const bench = await startBenchBrowser();
  const times = [];
  for (const words of [1000, 10_000, 100_000, 1_000_000])
    times.push(await measureFloor(bench, words, words > 100_000 ? 3 : 5));
  await bench.close();
  return [
    ...times.map(({ words, floor, ours, drawing, first }) => ({
      what: `shade ${words.toLocaleString('en')} words beside the floor`,
      ratio: ours / floor,
      note: `${ours.toFixed(1)} ms of the page's thread; floor ${floor.toFixed(1)}; first time ${first.toFixed(0)}; drawing ${drawing.toFixed(0)}`,
      most: 1.5,
    })),
    {
      what: 'growth of shading with the words',
      ratio: growthOf(times),
      note: 'the power of the number of words by which the time grows; 1 is linear',
      most: 1.1,
    },
  ];
}

async function measureBesideHighlighter(): Promise<Figure[]> {
  const bench = await startBenchBrowser();
  const marks = await measureHighlighter(bench, 2000, 3);
  await bench.close();
  return (['list', 'pattern'] as const).flatMap((by) => [
    {
      what: `mark.js by ${by}, beside shading`,
      ratio: marks[by].shade / marks.ours.shade,
      note: `${marks[by].shade.toFixed(0)} ms and ${marks[by].added} elements more; ours ${marks.ours.shade.toFixed(0)} and ${marks.ours.added}`,
      least: 20,
    },
    {
      what: `mark.js by ${by}, beside shading anew`,
      ratio: marks[by].reshade / marks.ours.reshade,
      note: `${marks[by].reshade.toFixed(0)} ms; ours ${marks.ours.reshade.toFixed(0)}`,
      least: 50,
    },
  ]);
}

async function measureAnswer(): Promise<Figure[]> {
  const { coldStart, guessed, bareFetch, bareTable, warm } = await measureBackground(7);
  return [
    {
      what: 'answer of a stopped background',
      ratio: coldStart / bareFetch,
      note: `${coldStart.toFixed(0)} ms; reading table and model ${bareFetch.toFixed(0)}, the table alone ${bareTable.toFixed(0)}; a running one ${warm.toFixed(1)}`,
      most: 2,
    },
    {
      what: 'the same about a word that is guessed',
      ratio: guessed / bareFetch,
      note: `${guessed.toFixed(0)} ms, most of it the model`,
    },
  ];
}

async function measureCards(): Promise<Figure[]> {
  const usual = await measureCardOpening(12);
  const slow = await measureCardOpening(12, SLOWER);
  return [
    ofLimit('card, from the click until it is drawn', usual.median, CARD_LIMIT),
    ofLimit('card over a page at a sixth of the speed', slow.median, SLOW_CARD_LIMIT),
  ];
}

async function measureAnew(): Promise<Figure[]> {
  const texts = measureJudgingAnew();
  return [
    {
      what: 'growth of judging anew with the distinct words',
      ratio: growthOf(texts),
      note: `power of their number, for the group a step on: ${texts.map(({ words, ours }) => `${words.toLocaleString('en')} in ${ours.toFixed(1)} ms`).join(', ')}`,
      most: 1.1,
    },
  ];
}

async function measureClimbing(): Promise<Figure[]> {
  const climb = measureClimb();
  return [
    {
      what: 'climb of 100,000 words over 100 steps',
      ratio: climb.warm / climb.naive,
      note: `${climb.warm.toFixed(0)} ms; ${climb.naive.toFixed(0)} ms by judging at every step; ${climb.cold.toFixed(0)} ms with words analysed anew`,
    },
  ];
}

async function measureRanking(): Promise<Figure[]> {
  const shelf = measureShelf();
  return [
    ofLimit('rank a shelf of 10,000 texts for another group', shelf.anotherGroup, 100),
    ofLimit('rank it for the group a step on', shelf.anotherStep, 100),
    {
      what: 'look up all its words, once',
      ratio: shelf.analysing / shelf.anotherGroup,
      note: `${perSecond(shelf.words, shelf.analysing)}; ratio to ranking for another group`,
    },
  ];
}

async function measureVetting(): Promise<Figure[]> {
  const figures: Figure[] = [];
  for (const size of FILE_SIZES) {
    const { running, whole, megabytes } = await measureVetMany(size);
    const [one, two] = running;
    figures.push(
      {
        what: `vet files of ${size.toLocaleString('en')} signs, to 600,000 words/s`,
        ratio: two / 600_000,
        note: `${two.toLocaleString('en')} words/s on two threads; with the start ${whole[1].toLocaleString('en')}; ${megabytes} MB`,
        least: 1,
      },
      {
        what: `what a second thread gains on files of ${size.toLocaleString('en')}`,
        ratio: two / one,
        note: `${one.toLocaleString('en')} words/s on one`,
        least: 1.6,
      },
    );
  }
  return figures;
}

async function measureBytes(): Promise<Figure[]> {
  const memory = await measureMemory();
  const ofMegabytes = (what: string, bytes: number, most: number): Figure => ({
    what: `${what}, to ${most} MB`,
    ratio: bytes / most / 1e6,
    note: `${(bytes / 1e6).toFixed(1)} MB`,
    most: 1,
  });
  return [
    ofMegabytes('memory of the background', memory.background, 10),
    ofMegabytes('memory of a tab with 10,000 words', memory.tab, 4),
    ofMegabytes('memory of a tab with a book of 1,000,000', memory.book, 40),
    ofMegabytes('what 80 pages more leave behind', memory.growth, 1),
  ];
}

async function measureHostile(): Promise<Figure[]> {
  const pages = await measureHostilePages();
  return pages.map(({ what, longest }) => ofLimit(`longest task on ${what}`, longest, HOSTILE_LIMIT));
}

async function measureLong(): Promise<Figure[]> {
  const page = await measureLongPage();
  if (!page.same) throw new Error('The page is not as it was when the shading is stopped.');
  return [
    ofLimit('longest task on a page of 100,000 words', page.longest, 50),
    {
      what: 'longest task while it is stopped',
      ratio: page.stopping / 50,
      note: `${page.stopping.toFixed(0)} ms: the browser's own pass over its styles; ${page.marked} words were marked in ${(page.total / 1000).toFixed(1)} s`,
    },
  ];
}

async function measureLaptop(): Promise<Figure[]> {
  const pages = await measureSlowLaptop(slowPages([4000, 20_000, 100_000]));
  return pages.flatMap(({ name, marked, counted, longest, plain, shaded }) => {
    const on = `${name} at a sixth of the speed`;
    return [
      {
        what: `scroll ${on}`,
        ratio: shaded.high / plain.high,
        note: `95th percentile of frames ${shaded.high.toFixed(0)} ms, plain ${plain.high.toFixed(0)}`,
        most: 1.5,
      },
      ...(marked === null ? [] : [ofLimit(`first marks on ${on}`, marked, 700)]),
      ofLimit(`figures of ${on}`, counted, 1500),
      ofLimit(`longest task on ${on}`, longest, 50),
    ];
  });
}

async function measureDesk(): Promise<Figure[]> {
  const desk = await measureDeskTyping();
  const slow = await measureDeskTyping(SLOWER);
  return [
    ofLimit('work a key takes at the desk, 95th percentile', desk.work.high, 16),
    {
      ...ofLimit('key to shaded text drawn, 95th percentile', desk.drawn.high, 16),
      note: `${desk.drawn.high.toFixed(1)} ms of 16 allowed, of which up to 17 are the wait for the display; ${desk.key.high.toFixed(1)} until the marks are in the document`,
    },
    {
      ...ofLimit('the same at a sixth of the speed', slow.drawn.high, 50),
      note: `${slow.drawn.high.toFixed(1)} ms of 50 allowed; ${slow.key.high.toFixed(1)} until the marks are in the document`,
    },
    ofLimit('longest task while keys are typed', desk.typing, 50),
    {
      ...ofLimit('longest task when 50,000 words are pasted', desk.pasting, 50),
      note: `${desk.pasting.toFixed(0)} ms; shaded after ${desk.shaded.toFixed(0)} ms, counted after ${desk.counted.toFixed(0)} ms`,
    },
  ];
}

async function measurePlan(): Promise<Figure[]> {
  const { shown, first, longest } = await measureDeskPlan();
  return [
    ofLimit('plan of 1,000 words, shown', shown, 2000),
    ofLimit('longest task of the first plan', first, 50),
    ofLimit('longest task of the second plan', longest, 50),
  ];
}

function ofLimit(what: string, milliseconds: number, limit: number): Figure {
  return {
    what,
    ratio: milliseconds / limit,
    note: `${milliseconds.toFixed(1)} ms of ${limit} allowed`,
    most: 1,
  };
}

function time(work: () => unknown): number {
  const times = Array.from({ length: 5 }, () => {
    const start = performance.now();
    work();
    return performance.now() - start;
  });
  return median(times);
}

function perSecond(count: number, milliseconds: number): string {
  return `${Math.round((count / milliseconds) * 1000).toLocaleString('en')} words/s`;
}
