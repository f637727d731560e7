import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { english } from '../src/wording/en.ts';
import { spanish } from '../src/wording/es.ts';
import { listMessages } from '../src/wording/list-messages.ts';
import { avoided, names } from '../src/wording/names.ts';

type Language = 'en' | 'es';
type Texts = ReadonlyMap<string, string>;

// The texts about steps are left out, since words that steps teach are not words of the interface. The titles of steps
// are checked with the sequences.
const { steps: _, ...spoken } = english;
const interfaces: Readonly<Record<Language, Texts>> = {
  en: interfaceTexts('en', spoken),
  es: interfaceTexts('es', spanish),
};
const texts: Readonly<Record<Language, Texts>> = {
  en: new Map([...interfaces.en, ...sequenceTexts(), ...readmeLines()]),
  es: interfaces.es,
};

describe.each(['en', 'es'] as const)('texts in %s', (language) => {
  test.each(formerNames(language))('do not say “%s” any more', (former) => {
    expect(findAll(former, texts[language])).toEqual([]);
  });

  test.each(avoided[language])('do not say “%s” on screen', (phrase) => {
    expect(findAll(phrase, interfaces[language])).toEqual([]);
  });

  test('use all names of the table', () => {
    const all = [...texts[language].values()].join('\n').toLowerCase();
    const unsaid = Object.values(names).filter((name) => !all.includes(name[language].toLowerCase()));
    expect(unsaid.map((name) => name[language])).toEqual([]);
  });
});

// A sentence for each former name, to check that the pattern of the name works. A pattern that finds nothing would let
// the name come back.
test.each([
  ['en', 'reach', 'It reaches 95%.'],
  ['en', 'gap', 'Gaps between letters'],
  ['en', 'opens', 'Teaching it opens {count} places.'],
  ['en', 'put on the shelf', 'Put it on the shelf'],
  ['en', 'desk', 'Take the text to the desk.'],
  ['en', 'weakly', 'Last syllables said weakly'],
  ['es', 'descodificar', 'Lo que se puede descodificar.'],
  ['es', 'débil', 'Vocales débiles'],
] as const)(
  'in %s, the former name %s is found in a sentence that contains it',
  (language, _what, sentence) => {
    const found = formerNames(language).filter(
      (former) => findAll(former, new Map([['it', sentence]])).length > 0,
    );
    expect(found).not.toEqual([]);
  },
);

function formerNames(language: Language): readonly string[] {
  const was = Object.values(names).flatMap((name) => {
    const former: Partial<Record<Language, readonly string[]>> = name.was;
    return former[language] ?? [];
  });
  return was;
}

function findAll(former: string, where: Texts): string[] {
  const whole = new RegExp(`(?<![\\p{L}\\p{N}])(?:${former})(?![\\p{L}\\p{N}])`, 'iu');
  return [...where].filter(([, text]) => whole.test(text)).map(([place, text]) => `${place}: ${text}`);
}

function interfaceTexts(language: Language, parts: Parameters<typeof listMessages>[1]): Texts {
  const messages = Object.entries(listMessages(language, parts));
  // Placeholders have names from the code, so they are not checked.
  return new Map(messages.map(([id, { message }]) => [id, message.replace(/\{(?!count\})\w+\}/g, '…')]));
}

/**
 * Returns the texts of the starters about themselves and their steps. England's starter keeps the words of its
 * document.
 */
function sequenceTexts(): [string, string][] {
  const folder = new URL('../profiles/sequences/', import.meta.url);
  return readdirSync(folder).flatMap((file) => {
    const { name, source, note, steps } = JSON.parse(readFileSync(new URL(file, folder), 'utf8')) as {
      name: string;
      source: string;
      note: string;
      steps: readonly { title: string }[];
    };
    return [name, source, note, ...steps.map(({ title }) => title)].map((text, i): [string, string] => [
      `${file} ${i}`,
      text,
    ]);
  });
}

/** Returns the lines of the readme without its commands and links, which keep the names of files and fields. */
function readmeLines(): [string, string][] {
  const readme = readFileSync(new URL('../README.md', import.meta.url), 'utf8');
  return readme
    .replace(/```.*?```/gs, '')
    .replace(/`[^`]*`/g, '')
    .replace(/\]\([^)]*\)/g, ']')
    .split('\n')
    .map((line, i): [string, string] => [`README.md ${i}`, line]);
}
