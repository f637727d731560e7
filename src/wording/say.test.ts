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
  test('chooses the form for the number and writes the number in the style of the language', () => {
    sayFrom(listMessages('en', texts));
    expect(sayIt(asked, { count: 1, place: 'net' })).toBe('1 fish in the net');
    expect(sayIt(asked, { count: 1200, place: 'sea' })).toBe('1,200 fishes in the sea');
  });

  test('puts any text into a placeholder unchanged, even with braces and dollar signs', () => {
    sayFrom(listMessages('en', texts));
    expect(sayIt(asked, { count: 2, place: '{count} $1' })).toBe('2 fishes in the {count} $1');
  });

  test('returns the pieces of a text, so that a placeholder may be an element', () => {
    sayFrom(listMessages('en', texts));
    const bold = { bold: true };
    const pieces = (sayWith as (id: TextId, filling: unknown) => unknown[])(asked, { count: 2, place: bold });
    expect(pieces).toContain(bold);
  });

  test('returns the id of a missing text', () => {
    expect(sayIt('fish.none' as TextId)).toBe('fish.none');
  });

  test('uses the language of the loaded texts and reports it', () => {
    sayFrom(listMessages('es', spanish));
    expect(spokenLanguage()).toBe('es');
    expect(say('panel.shadeThisPage')).toBe(spanish.panel.shadeThisPage);
  });
});
