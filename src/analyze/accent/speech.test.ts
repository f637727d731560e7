import { expect, test } from 'vitest';
import { accentOf, defaultAccent, speechOf } from './speech.ts';

test.each([
  ['en-GB', 'british'],
  ['en-AU', 'british'],
  ['en-NZ', 'british'],
  ['en-IE', 'british'],
  ['en_GB', 'british'],
  ['en-GB-oxendict', 'british'],
  ['en-US', 'american'],
  ['en', 'american'],
  ['es-ES', 'american'],
  ['fr-IE', 'american'],
  ['', 'american'],
])('in a browser set to %j a new group starts with the %s accent', (locale, accent) =>
  expect(defaultAccent(locale)).toBe(accent),
);

test('the accent of a sequence takes precedence over that of the browser', () => {
  expect(defaultAccent('en-US', { accent: 'british' })).toBe('british');
  expect(defaultAccent('en-GB', { accent: 'american' })).toBe('american');
  expect(defaultAccent('en-GB', {})).toBe('british');
  expect(defaultAccent('en-GB', null)).toBe('british');
});

test('the default accent is American, and the default British bath has the a of father', () => {
  expect(accentOf({})).toBe('american');
  expect(speechOf({ options: {} })).toEqual({ accent: 'american', bath: 'cat' });
  expect(speechOf({ accent: 'british', options: {} })).toEqual({ accent: 'british', bath: 'father' });
  expect(speechOf({ accent: 'british', options: { bath: 'cat' } })).toEqual({
    accent: 'british',
    bath: 'cat',
  });
});
