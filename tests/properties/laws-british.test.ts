import { afterAll, describe, expect, test, vi } from 'vitest';

vi.hoisted(() => {
  process.env.LAWS_ACCENT = 'british';
});
afterAll(() => {
  delete process.env.LAWS_ACCENT;
});

import { britishLaws } from '../laws/all-laws.ts';
import { checkLaw, readExceptions } from '../laws/law.ts';
import { accent } from '../laws/lesson-words.ts';

/**
 * Checks each law over the whole table as the British pronounce it. Exceptions that only British English has are in
 * tests/laws/exceptions/british.
 */
describe('laws of the engine in British English', () => {
  test('are checked against British readings', () => expect(accent).toBe('british'));

  test.each(britishLaws.map((law) => [law.name, law] as const))('%s', { timeout: 120_000 }, (_, law) => {
    const { id, looked, unexplained, outdated } = checkLaw(law(), 'british');
    expect(looked).toBeGreaterThan(20);
    expect(unexplained, `mend the rule, or give the reason in exceptions/british/${id}.tsv`).toEqual([]);
    expect(outdated, `no exceptions any more: take them out of exceptions/british/${id}.tsv`).toEqual([]);
    for (const [key, reason] of readExceptions(id, 'british'))
      expect(reason, `${id}.tsv, ${key}`).not.toBe('');
  });
});
