import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { english } from '../src/wording/en.ts';
import { languages } from '../src/wording/languages.ts';
import { listMessages } from '../src/wording/list-messages.ts';
import type { Text } from '../src/wording/translation.ts';

type Parts = Readonly<Record<string, Readonly<Record<string, Text>>>>;

const all = flatten(english);

const { en, ...others } = languages;

test('the titles of steps are the same as in the sequences that come with the extension', () => {
  const names = { steady: 'steady-steps', tide: 'second-tide', england: 'england-2013' };
  const titles = Object.entries(names).flatMap(([name, file]) => {
    const path = new URL(`../profiles/sequences/${file}.json`, import.meta.url);
    const { note, steps } = JSON.parse(readFileSync(path, 'utf8')) as {
      note: string;
      steps: readonly { title: string }[];
    };
    return [[`${name}Note`, note], ...steps.map(({ title }, i) => [`${name}${i + 1}`, title])];
  });
  expect(english.steps).toEqual(Object.fromEntries(titles));
});

test('the first language is English', () => expect(en).toBe(english));

describe.each(Object.entries(others))('the interface in %s', (_language, texts) => {
  const other = flatten(texts);

  test('has every text of the English interface, and no others', () => {
    expect([...other.keys()].sort()).toEqual([...all.keys()].sort());
  });

  test('has the same placeholders in every form', () => {
    const differing = [...all].filter(([id, text]) => {
      const wanted = holesOf(formsOf(text).other!).join();
      // A form for the number one may say "one" in letters.
      return Object.entries(formsOf(other.get(id)!)).some(([form, said]) => {
        const found = holesOf(said).join();
        return found !== wanted && !(form === 'one' && holesOf(`${said}{count}`).join() === wanted);
      });
    });
    expect(differing).toEqual([]);
  });

  test('has counted forms wherever the English has them', () => {
    const differing = [...all].filter(([id, text]) => isCounted(text) !== isCounted(other.get(id)!));
    expect(differing.map(([id]) => id)).toEqual([]);
  });

  test('has no phrase that is the same as in English', () => {
    const same = [...all].filter(
      ([id, text]) =>
        formsOf(text).other === formsOf(other.get(id)!).other &&
        /[a-z]{3,} [a-z]{3,}/.test(formsOf(text).other!),
    );
    expect(same.map(([id]) => id)).toEqual([]);
  });
});

// developer.chrome.com, extensions reference, manifest "description": no more than 132 characters.
test.each(Object.entries(languages))('browsers accept the description in %s', (language, texts) => {
  const { message } = listMessages(language, texts).manifest_description!;
  expect(message.length).toBeLessThanOrEqual(132);
});

test('no text has a dollar sign, which browsers read as a placeholder of their own', () => {
  const all = Object.values(languages).flatMap((parts) => Object.values(listMessages('en', parts)));
  expect(all.filter(({ message }) => message.includes('$'))).toEqual([]);
});

test('no two texts have names that differ only in capitals, since browsers treat such names as one', () => {
  const names = Object.keys(listMessages('en', english)).map((name) => name.toLowerCase());
  expect(new Set(names).size).toBe(names.length);
  expect(names.filter((name) => !/^[a-z0-9_@]+$/.test(name))).toEqual([]);
});

function flatten(parts: Parts): Map<string, Text> {
  return new Map(
    Object.entries(parts).flatMap(([part, texts]) =>
      Object.entries(texts).map(([name, text]): [string, Text] => [`${part}.${name}`, text]),
    ),
  );
}

function formsOf(text: Text): Record<string, string> {
  return typeof text === 'string' ? { other: text } : { ...text };
}

function holesOf(text: string): string[] {
  return [...new Set([...text.matchAll(/\{(\w+)\}/g)].map(([, hole]) => hole!))].sort();
}

function isCounted(text: Text): boolean {
  return typeof text !== 'string';
}
