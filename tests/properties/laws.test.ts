import { describe, expect, test } from 'vitest';
import { allLaws } from '../laws/all-laws.ts';
import { MOST_IRREGULAR } from '../laws/irregular-law.ts';
import { checkLaw, readExceptions } from '../laws/law.ts';

/** Checks each law over the whole table. The exceptions to a law are in tests/laws/exceptions, with their reasons. */
describe('laws of the engine', () => {
  test.each(allLaws.map((law) => [law.name, law] as const))('%s', { timeout: 120_000 }, (_, law) => {
    const { id, looked, unexplained, outdated } = checkLaw(law());
    expect(looked).toBeGreaterThan(20);
    expect(unexplained, `mend the rule, or give the reason in exceptions/${id}.tsv`).toEqual([]);
    expect(outdated, `no exceptions any more: take them out of exceptions/${id}.tsv`).toEqual([]);
    for (const [key, reason] of readExceptions(id)) expect(reason, `${id}.tsv, ${key}`).not.toBe('');
  });

  test('the list of irregular words is short', () => {
    expect(readExceptions('irregular').size).toBeLessThan(MOST_IRREGULAR);
  });
});
