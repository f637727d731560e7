import { afterEach, describe, expect, test } from 'vitest';
import { spanish } from './es.ts';
import { listMessages } from './list-messages.ts';
import { say, sayFrom, sayWith, spokenLanguage, type TextId } from './say.ts';
import { speakEnglish } from './speak-english.ts';

const texts = {
  fish: { count: { one: '{count} fish in the {place}', other: '{count} fishes in the {place}' } },
};
const asked = 'fish.count' as TextId;
const sayIt = say as (id: TextId, filling?: Record<string, unknown>) => string;

afterEach(speakEnglish);

describe('say', () => {
  test('takes the form that the number asks for and writes the number as the language does', () => {
    sayFrom(listMessages('en', texts));
    expect(sayIt(asked, { count: 1, place: 'net' })).toBe('1 fish in the net');
    expect(sayIt(asked, { count: 1200, place: 'sea' })).toBe('1,200 fishes in the sea');
  });

  test('puts any text into a hole unchanged, braces and dollars too', () => {
    sayFrom(listMessages('en', texts));
    expect(sayIt(asked, { count: 2, place: '{count} $1' })).toBe('2 fishes in the {count} $1');
  });

  test('gives the pieces, so that a hole may be an element', () => {
    sayFrom(listMessages('en', texts));
    const bold = { bold: true };
    const pieces = (sayWith as (id: TextId, filling: unknown) => unknown[])(asked, { count: 2, place: bold });
    expect(pieces).toContain(bold);
  });

  test('names a text it does not have', () => {
    expect(sayIt('fish.none' as TextId)).toBe('fish.none');
  });

  test('knows the language it speaks', () => {
    sayFrom(listMessages('es', spanish));
    expect(spokenLanguage()).toBe('es');
    expect(say('panel.shadeThisPage')).toBe(spanish.panel.shadeThisPage);
  });
});
