import { describe, expect, test } from 'vitest';
import { target } from '../fuzz/fuzz-target.ts';
import { loadTargets } from '../fuzz/fuzz-targets.ts';
import { nastyText } from '../fuzz/nasty-inputs.ts';
import { runCases } from '../fuzz/run-cases.ts';

/**
 * The short run of `npm run fuzz`. Whatever a page, a file or an older version supplies, the tested code throws only
 * its own kinds of faults.
 */
const CASES = 12_000;
const targets = await loadTargets();
const shares = targets.reduce((sum, { share }) => sum + share, 0);

describe('each fuzz target withstands any input', () => {
  test.each(targets.map((each) => [each.name, each] as const))('%s', async (_, each) => {
    const cases = Math.ceil((CASES * each.share) / shares);
    expect((await runCases(each, cases, 20_261_125)).failure).toBeNull();
  });
});

test('the fuzzer finds a reader that throws or is slow, and shows its input', async () => {
  const throws = target({
    name: 'throws',
    input: nastyText,
    share: 1,
    check: (text) => {
      if (text.includes('ferry')) throw new Error('no ferry');
    },
  });
  const thrown = await runCases(throws, 1000, 1);
  expect(thrown.failure).toMatch(/^input: ".*ferry.*"\nError: no ferry/s);
  let clock = 0;
  const slow = target({
    name: 'slow',
    input: nastyText,
    share: 1,
    check: () => {
      clock += 1001;
    },
  });
  expect((await runCases(slow, 10, 1, { now: () => clock })).failure).toMatch(/took 1001 ms$/);
});
