import { expect, test } from 'vitest';
import { showProgress } from './show-progress.ts';

function follow(isTTY: boolean): string[] {
  const written: string[] = [];
  const progress = showProgress(2, { isTTY, write: (text: string) => written.push(text) > 0 });
  progress.step();
  progress.say('b.txt: broken.');
  progress.step();
  progress.end();
  return written;
}

test('on a terminal a progress bar fills, makes room for messages, and is removed at the end', () => {
  const bar = (filled: number) => '█'.repeat(filled) + '░'.repeat(30 - filled);
  expect(follow(true)).toEqual([
    `\r\u001b[K${bar(15)} 1 of 2 texts`,
    '\r\u001b[K',
    'b.txt: broken.\n',
    `\r\u001b[K${bar(30)} 2 of 2 texts`,
    '\r\u001b[K',
  ]);
});

test('without a terminal only messages are written', () => {
  expect(follow(false)).toEqual(['b.txt: broken.\n']);
});
