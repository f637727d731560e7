import { describe, expect, test } from 'vitest';
import { compileGroup, createJudge, parseGroup, tokenize } from '../src/analyze/index.ts';
import { loadAnalyzer } from './load-analyzer.ts';

// A group that knows only a few letters. Hardly any word is decodable for the group, so names are judged as names.
const group = compileGroup(parseGroup({ name: 'Test', sequence: null, alsoTaught: ['m'] }), null);
const judge = createJudge(loadAnalyzer(), group);

function names(text: string): string[] {
  const found = tokenize(text).filter(({ kind, key }) => kind === 'word' && judge(key).standing === 'name');
  return [...new Set(found.map(({ start, end }) => text.slice(start, end)))];
}

describe('names are distinguished from words', () => {
  test('a story has names at the start of a sentence, in speech and with ’s; Monday, I and The are no names', () => {
    const story = `Wilma ran along the quay. “Bram!” she cried. “The ferry is late, and I cannot see it.” On Monday
      Bram's uncle Otto had gone to Tarn Island with Ines. Then Wilma saw a light. Nobody else did, but Ines waved.`;
    expect(names(story)).toEqual(['Wilma', 'Bram', "Bram's", 'Otto', 'Tarn', 'Island', 'Ines']);
  });

  test('a headline with capitals throughout has no names; a common word with a capital in a news text is a name', () => {
    const news = `FERRY BACK IN HARBOUR\n\nStorm Keeps Small Boats In Port\n\nThe Harbour Office said on Tuesday that the
      Marigold is safe. Captain Falk thanked Ingrid Falk and the people of Skarvik. Fishing starts again in May.`;
    expect(names(news)).toEqual(['Harbour', 'Office', 'Marigold', 'Falk', 'Ingrid', 'Skarvik']);
  });

  test('parts joined by a hyphen or an ampersand form one name, and a day or a month ends a name', () => {
    const notice =
      'We met at the Lost-Anchor Hall. She works for Salt & Rope. They play the Lost Anchor October 9.';
    expect(names(notice)).toEqual(['Lost', 'Anchor', 'Hall', 'Salt', 'Rope']);
  });

  test('a decodable name is read like a word', () => {
    const knows = compileGroup(
      parseGroup({ name: 'Test', sequence: null, alsoTaught: ['p', 'short-a', 'm', 's', 'short-i'] }),
      null,
    );
    expect(createJudge(loadAnalyzer(), knows)('Pam').standing).toBe('reads');
  });
});
