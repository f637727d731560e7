import { mkdirSync, writeFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import { diffArrays } from 'diff';
import { listPictureCases, listWords } from './picture-cases.ts';
import { openPictureBench } from './read-pictures.ts';

/**
 * How well pictures of text are read: `npx tsx tests/accuracy/measure-pictures.ts [KIND…] [--every N] [--misses] [--keep FOLDER]`. Kinds: screen
 * (14 to 20 px), fine (the same on a screen of two dots a pixel), scan (200 dpi, turned, noise), columns, web (../shared/pages). The own text is
 * that of the first shelf. A word is right when it is there with the same letters, in order; signs around it do not count.
 */
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    every: { type: 'string', default: '1' },
    misses: { type: 'boolean', default: false },
    keep: { type: 'string' },
  },
});

interface Sum {
  words: number;
  right: number;
  added: number;
  took: number;
  cases: number;
  slowest: number;
}

const sums = new Map<string, Sum>();
/** Sureness of right and of wrong words, in hundredths. */
const sureness: { readonly right: number[]; readonly wrong: number[] } = { right: [], wrong: [] };
const bench = await openPictureBench();
for (const one of listPictureCases(positionals, Number(values.every))) {
  const picture = await bench.render(one);
  const { reading, took } = await bench.read(picture, one.scan ? 'image/jpeg' : 'image/png');
  const read = reading.lines.flatMap(({ words }) =>
    words.flatMap(({ text, sureness }) => listWords(text).map((word) => ({ word, sureness }))),
  );
  const changes = diffArrays(
    [...one.words],
    read.map(({ word }) => word),
  );
  let right = 0;
  let added = 0;
  let place = 0;
  const misses: string[] = [];
  changes.forEach(({ value, added: isAdded, removed }, n) => {
    if (removed) {
      const next = changes[n + 1];
      misses.push(`${value.join(' ')} > ${next?.added ? next.value.join(' ') : '-'}`);
      return;
    }
    for (let k = 0; k < value.length; k++) {
      const rounded = Math.round(read[place++]!.sureness * 100);
      (isAdded ? sureness.wrong : sureness.right).push(rounded);
    }
    if (isAdded) added += value.length;
    else right += value.length;
  });
  const sum = sums.get(one.kind) ?? { words: 0, right: 0, added: 0, took: 0, cases: 0, slowest: 0 };
  sums.set(one.kind, {
    words: sum.words + one.words.length,
    right: sum.right + right,
    added: sum.added + added,
    took: sum.took + took,
    cases: sum.cases + 1,
    slowest: Math.max(sum.slowest, took),
  });
  if (values.misses && misses.length > 0)
    console.log(
      `${one.name}: ${right} of ${one.words.length}, ${Math.round(took)} ms\n   ${misses.join(' | ')}`,
    );
  if (values.keep) {
    mkdirSync(values.keep, { recursive: true });
    writeFileSync(`${values.keep}/${one.name.replace(/\W+/g, '-')}.png`, picture);
  }
}
await bench.close();

for (const [kind, { words, right, added, took, cases, slowest }] of sums)
  console.log(
    `${kind.padEnd(8)} ${((right / words) * 100).toFixed(2)}% of ${words} words, ${added} that are not there; ${Math.round(took / cases)} ms a picture, ${Math.round(slowest)} at most`,
  );
for (const limit of [40, 50, 60, 70, 80, 85, 90]) {
  const below = (list: readonly number[]): string => {
    const found = list.filter((one) => one < limit).length;
    return `${found} of ${list.length}`;
  };
  console.log(`below ${limit}: right ${below(sureness.right)}, wrong ${below(sureness.wrong)}`);
}
