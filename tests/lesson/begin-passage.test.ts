import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type BegunPassage, beginPassage } from '../../src/lesson/begin-passage/index.ts';
import { createPicker } from '../../src/lesson/index.ts';
import { createShader } from '../../src/passage/shade-line.ts';
import { lessonInput, sequences } from './load-lesson.ts';

/** A passage must be begun for every group with at least this number of readable words. */
const ENOUGH_WORDS = 400;
/** If at least this number of bank words practise a step, most passages for the step must have eight such words. */
const MANY_TO_PRACTISE = 150;

type Input = ReturnType<typeof lessonInput>;

function begin({ known, group, focus }: Input, seed: number, topic: string[] = []): BegunPassage | null {
  return beginPassage(known, { names: group.names, focus, topic }, createPicker(seed, 'passage'));
}

const steps = sequences.flatMap(({ id, steps: all }) => all.map((_, i) => ({ id, step: i + 1 })));
const drawn = fc.sample(fc.record({ at: fc.constantFrom(...steps), seed: fc.nat(10_000) }), {
  numRuns: 90,
  seed: 20261130,
});
const cases = drawn.map(({ at, seed }) => {
  const input = lessonInput(at.id, at.step);
  return { ...at, seed, input, passage: begin(input, seed) };
});
const passages = cases.flatMap(({ passage, ...rest }) => (passage ? [{ ...rest, passage }] : []));

test('a passage is begun for every group with enough readable words', () => {
  for (const { input, passage, id, step } of cases)
    if (input.known.words.length >= ENOUGH_WORDS) expect(passage, `${id} ${step}`).not.toBeNull();
  expect(passages.length).toBeGreaterThan(70);
});

test('a begun passage has only words that the group can read, and the desk shades none of them as beyond', () => {
  for (const { input, passage, id, step } of passages) {
    expect(input.known.reads(passage.text), passage.text).toBe(true);
    expect(input.known.reads(passage.title), passage.title).toBe(true);
    const shade = createShader(input.judge)(passage.text);
    const beyond = passage.text
      .split('\n')
      .flatMap((line) => shade(line).words)
      .filter(({ standing }) => standing === 'beyond');
    expect(beyond, `${id} ${step}: ${passage.text}`).toEqual([]);
  }
});

test('a begun passage has 60 to 120 words, in two to six paragraphs of complete sentences', () => {
  for (const { passage } of passages) {
    const words = passage.text.match(/\p{L}+(?:’\p{L}+)?/gu)!.length;
    expect(words).toBeGreaterThanOrEqual(60);
    expect(words).toBeLessThanOrEqual(120);
    const paragraphs = passage.text.split('\n');
    expect(paragraphs.length).toBeGreaterThanOrEqual(2);
    expect(paragraphs.length).toBeLessThanOrEqual(6);
    for (const paragraph of paragraphs) expect(paragraph).toMatch(/^[“\p{Lu}].*[.?!]”?$/u);
  }
});

test('verbs, articles and pronouns agree in begun passages', () => {
  const all = passages.map(({ passage }) => passage.text).join('\n');
  expect(all).not.toMatch(/\b(?:He|She|It|he|she|it) (?:were|are|have)\b/);
  expect(all).not.toMatch(/\b(?:They|They all) (?:was|is|has)\b/);
  expect(all).not.toMatch(/ and \p{Lu}\p{Ll}+ (?:was|is|has)\b/u);
  expect(all).not.toMatch(/\b(?:can|will|did|to|not) (?:sat|ran|went|was|had|got|fell)\b/);
  expect(all).not.toMatch(/\ba [aeio]|\ban [^aeiou]/i);
  expect(all).not.toMatch(/\b(?:the|a|an) (?:the|a|an|of)\b/i);
  expect(all).not.toMatch(/[{}[\]/]|\bundefined\b/);
});

test('each person in a begun passage keeps one pronoun', () => {
  const she = new Set(['Ines', 'Wilma']);
  for (const { passage } of passages) {
    const people = [...new Set(passage.text.match(/\b(?:Ines|Wilma|Otto|Bram)\b/g))];
    expect(people).toHaveLength(2);
    const isMixed = people.some((name) => she.has(name)) && people.some((name) => !she.has(name));
    // In `Bram had a net. He ran.`, the pronoun refers to the name before it.
    for (const [, name, pronoun] of passage.text.matchAll(
      /\b(Ines|Wilma|Otto|Bram) [a-z][^.?!“”]*[.!] (He|She) /g,
    ))
      if (isMixed && !passage.text.includes(`${name} and`))
        expect(pronoun).toBe(she.has(name!) ? 'She' : 'He');
    for (const [, name, his] of passage.text.matchAll(
      /\b(Ines|Wilma|Otto|Bram) (?!gave )\p{Ll}+ (his|her) /gu,
    ))
      expect(his).toBe(she.has(name!) ? 'her' : 'his');
  }
});

test('in a begun passage nobody is in two places, and things stay at their place until moved', () => {
  for (const { passage } of passages) {
    const where = new Map<string, string>();
    for (const { text, facts } of passage.told)
      for (const { who, moves, where: place } of facts) {
        if (!moves && where.has(who)) expect(where.get(who), `${who}: ${text}`).toBe(place);
        where.set(who, place);
      }
    expect(where.size).toBeGreaterThanOrEqual(2);
  }
});

test('for a step with many bank words, most begun passages practise eight, and nearly all practise five', () => {
  const rich = passages.filter(({ input: { known, focus } }) => {
    const practising = known.words.filter(
      ({ standing, reading }) =>
        standing !== 'by-sight' && focus.some((pattern) => reading.requires.includes(pattern)),
    );
    return practising.length >= MANY_TO_PRACTISE;
  });
  expect(rich.length).toBeGreaterThan(30);
  const share = (some: typeof passages, least: number): number =>
    some.filter(({ passage }) => passage.practised >= least).length / some.length;
  expect(share(rich, 8)).toBeGreaterThan(0.6);
  expect(share(rich, 5)).toBeGreaterThan(0.85);
});

describe('the topic of a begun passage', () => {
  test('adds its words if the group can read them and they fit', () => {
    const passage = begin(lessonInput('steady-steps', 30), 3, ['crab', 'net', 'dock', 'lighthouse'])!;
    expect(passage.used.length).toBeGreaterThanOrEqual(2);
    for (const word of passage.used) expect(passage.text.toLowerCase()).toContain(word);
    expect(passage.used).not.toContain('lighthouse');
  });
});

test('the same seed gives the same passage, and other seeds give other passages', () => {
  const input = lessonInput('steady-steps', 24);
  expect(begin(input, 5)).toEqual(begin(input, 5));
  const several = new Set([1, 2, 3, 4, 5, 6].map((seed) => begin(input, seed)?.text));
  expect(several.size).toBe(6);
});

test('a begun passage uses no names of places or ships, and a group that knows too little gets none', () => {
  const input = lessonInput('steady-steps', 20, { names: ['Tarn', 'Marigold'] });
  const passage = begin(input, 1)!;
  expect(passage.text).not.toMatch(/Tarn|Marigold/);
  expect(begin(lessonInput('steady-steps', 1), 1)).toBeNull();
});
