import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { whyOnlyIn } from './e2e/only-in.ts';

test('DEVELOPERS.md lists each reason for running a test in only one browser', () => {
  const docs = readFileSync(new URL('../DEVELOPERS.md', import.meta.url), 'utf8');
  for (const [reason, why] of Object.entries(whyOnlyIn)) expect(docs).toContain(`| ${reason} | ${why} |`);
});
