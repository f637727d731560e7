import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { openSwaps } from '../src/swap/index.ts';
import { inflect } from '../src/swap/inflect.ts';
import type { Form, PartOfSpeech } from '../src/swap/types.ts';

const table = openSwaps(readFileSync(new URL('../public/data/swaps.bin', import.meta.url)));
const rows = readFileSync(new URL('words/swap-forms.tsv', import.meta.url), 'utf8')
  .split('\n')
  .filter((line) => line !== '' && !line.startsWith('#'))
  .map((line) => line.split('\t') as [string, PartOfSpeech, Form, string]);

describe('the table gives the written form of a word', () => {
  test.each(rows)('%s %s %s: %s', (lemma, part, form, written) => {
    expect(inflect(lemma, part, form, table) ?? '').toBe(written);
  });
});
