import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { inVariety } from '../../variety/index.ts';
import { wordClasses } from '../sentences/vocabulary.ts';
import { compileBeats } from './compile-beats.ts';
import { plots } from './plots.ts';
import { jobVerbs, settings, storyClasses, storyPhrases } from './story-classes.ts';

/** Slots such as `{=numbers}` that are filled from the sentences' own phrases. */
const PHRASES = new Set(['numbers']);

describe.each(plots)('the plot $id', (plot) => {
  const beats = compileBeats(plot, (text) => inVariety(text, 'american'));
  const things = new Map(plot.things.split(' ').map((each) => each.split(':') as [string, string]));

  test('names only things that it draws, from classes that exist', () => {
    for (const of of things.values())
      expect(
        of === 'job' || of === 'word' || of in storyClasses || settings.every(({ classes }) => of in classes),
        of,
      ).toBe(true);
    const slots = beats.flatMap(({ ways, spare }) =>
      [...ways, ...spare].flat().flatMap((piece) => (typeof piece === 'string' ? [] : [piece.slot])),
    );
    for (const slot of slots) {
      if (/^[AB](?:\.(?:he|him|his))?$|^(?:at |to )?place$/.test(slot)) continue;
      const asIs = slot.startsWith('=') ? slot.slice(1) : null;
      if (asIs === null)
        expect([...things.keys()], slot).toContain(slot.replace(/^\S+ /, '').replace(/\.adj$/, ''));
      else
        expect(
          asIs in storyPhrases ||
            asIs in storyClasses ||
            asIs in settings[0]!.classes ||
            asIs in wordClasses ||
            PHRASES.has(asIs),
          slot,
        ).toBe(true);
    }
  });

  test('has everybody in one place at a time, whichever beats are left out', () => {
    const where = new Map<string, string>();
    for (const { facts, isOptional } of beats)
      for (const { who, moves, where: place } of facts) {
        expect(who, 'who or what').toMatch(/^[A-Za-z]\w*$/);
        if (!moves) expect(where.get(who), `${who} is at ${place}`).toBe(place);
        else if (isOptional) expect([...'AB'], 'who moves in a beat that may be left out').not.toContain(who);
        if (moves) where.set(who, place);
      }
  });

  test('closes its quotes, and ends each way to say a beat with a sentence end', () => {
    for (const { ways, spare } of beats)
      for (const way of [...ways, ...spare]) {
        const text = way.map((piece) => (typeof piece === 'string' ? piece : 'x')).join('');
        expect(text).toMatch(/[.?!]”?$/);
        expect(text.match(/“/g)?.length).toBe(text.match(/”/g)?.length);
        expect(text).not.toMatch(/[{}[\]|]/);
      }
  });
});

test('the stories use no word that is kept off lesson sheets', () => {
  const path = new URL('../../data/source/not-in-lessons.txt', import.meta.url);
  const kept = new Set(
    readFileSync(path, 'utf8')
      .split('\n')
      .filter((line) => !line.startsWith('#'))
      .flatMap((line) => line.split(/\s+/))
      .filter((word) => word.length > 1),
  );
  const said = JSON.stringify([plots, storyClasses, storyPhrases, settings, [...jobVerbs]]);
  const words = said.replace(/\\n|\{[^}]*\}/g, ' ').match(/[a-z'-]+/gi) ?? [];
  expect(words.length).toBeGreaterThan(3000);
  expect([...new Set(words.filter((word) => kept.has(word.toLowerCase())))]).toEqual([]);
});
