import { expect, test } from 'vitest';
import { openTerminal } from './terminal.ts';

test.each([
  [{ isTTY: true }, {}, true],
  [{ isTTY: false }, {}, false],
  [{ isTTY: true }, { NO_COLOR: '1' }, false],
  [{ isTTY: true }, { NO_COLOR: '' }, true],
  [{ isTTY: true }, { TERM: 'dumb' }, false],
])('for stdout %j and environment %j, styling is on: %s', (stdout, env, styled) => {
  const { bold, dim, accent } = openTerminal(stdout, env);
  for (const style of [bold, dim, accent]) expect(style('Reach') !== 'Reach').toBe(styled);
});

test.each([
  [undefined, 80],
  [0, 80],
  [60, 60],
  [200, 80],
])('a terminal with %s columns gives lines of %i characters', (columns, width) => {
  expect(openTerminal({ columns }, {}).width).toBe(width);
});
