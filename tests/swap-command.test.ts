import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

/** Tests the command as scripts call it. Other programs rely on the format of its output. */

const root = fileURLToPath(new URL('..', import.meta.url));
const herons = 'profiles/groups/herons.json';
const wave = '{"sentence":"It was an enormous wave.","start":10,"end":18}';

describe('swap', () => {
  test('prints one answer a line, in order, and goes on after a line with an error', () => {
    const { lines, code } = run(
      ['--json', '--all'],
      [wave, 'no JSON', '{"sentence":"Hi","start":0,"end":9}', '', wave],
    );
    expect(code).toBe(0);
    const [first, second, third, last] = lines;
    expect(lines.length).toBe(4);
    expect(Object.keys(first)).toEqual(['word', 'swaps', 'best']);
    expect(first.word).toBe('enormous');
    expect(first.swaps[0]).toMatchObject({ text: 'huge', reads: true, score: expect.any(Number) });
    expect(first.best).toBeGreaterThan(0);
    expect(second.error).toContain('JSON');
    expect(third.error).toContain('start');
    expect(last).toEqual(first);
  });

  test('for a group, puts swaps that the group can read first', () => {
    const { lines } = run(['--json', '--group', herons], [wave]);
    const [answer] = lines;
    expect(answer.swaps[0]).toMatchObject({ text: 'big', reads: true });
    expect(answer.swaps.find((swap: { text: string }) => swap.text === 'huge').reads).toBe(false);
  });

  test('without a group or --all, prints one sentence to stderr and no answer', () => {
    const { lines, code, problem } = run(['--json'], [wave]);
    expect([lines, code]).toEqual([[], 2]);
    expect(problem).toContain('Give a group');
  });
});

function run(options: readonly string[], input: readonly string[]) {
  const { stdout, stderr, status } = spawnSync(process.execPath, ['.output/cli/swap.mjs', ...options], {
    cwd: root,
    input: input.join('\n'),
    encoding: 'utf8',
  });
  const lines = stdout
    .split('\n')
    .filter((line) => line !== '')
    .map((line) => JSON.parse(line));
  return { lines, code: status, problem: stderr };
}
