import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { chooseReading, SURE } from '../src/analyze/homographs/choose-reading.ts';
import { HOMOGRAPHS } from '../src/analyze/homographs/is-homograph.ts';
import { readContext } from '../src/analyze/homographs/read-context.ts';
import weights from '../src/analyze/homographs/weights.json' with { type: 'json' };
import { compileGroup, createJudge, parseGroup, tokenize, vet } from '../src/analyze/index.ts';
import { fitWeights } from '../src/data/homographs/fit-weights.ts';
import { readExamples, readMoreExamples } from '../src/data/homographs/read-examples.ts';
import { measureHomographs } from './accuracy/measure-homographs.ts';
import { loadAnalyzer } from './load-analyzer.ts';

const analyzer = loadAnalyzer();

/** Sentences with one homograph between asterisks, grouped by the homograph's pronunciation there. */
const places: Readonly<Record<string, readonly string[]>> = {
  'R IY D': [
    'Can you *read* the name on the ferry?',
    'Wilma likes to *read* in bed.',
    'We will *read* the story of the Marigold again.',
    'Did Bram *read* the sign on the quay?',
    'I can *read* all of it!',
    "Otto didn't *read* the note.",
    '*Read* the tide table before you sail.',
    'They *read* to the small ones every day after lunch.',
    'Let me *read* it to you.',
    'Please *read* this page with Ines.',
  ],
  'R EH D': [
    'Last night Mr. Falk *read* us a tale about a whale.',
    'She *read* the letter and put it in her coat.',
    'Ines has *read* that book three times.',
    'I had *read* about the storm in the paper.',
    'He *read* the map, then he set off.',
    'The note was *read* out by Wilma.',
    'Have you *read* the new sign yet?',
    'Yesterday we *read* ten pages.',
  ],
  'L IY D': [
    'The steps *lead* down to the fish market.',
    'Bram will *lead* the way to the lighthouse.',
    'The dog was on a *lead*.',
    'Wilma took the *lead* in the race round the harbour.',
  ],
  'L EH D': ['The box was as heavy as *lead*.', 'Old *lead* pipes ran under the school.'],
  'W IH N D': [
    'The *wind* blew hard all night.',
    'A cold *wind* came in from the sea.',
    'The *wind* and the rain beat on the deck.',
    'There is not much *wind* today.',
  ],
  'W AY N D': ['You must *wind* the clock each day.', 'Otto had to *wind* the rope round the post.'],
  'L IH V': [
    'Ines and Bram *live* by the harbour.',
    'I *live* in Tarn Quay.',
    'Where do you *live*?',
    'Crabs *live* under the rocks.',
  ],
  'L AY V': ['We sell *live* crabs here.', 'A *live* band will play on the quay.'],
  'L IH V Z': ['Wilma *lives* near the lighthouse.', 'He *lives* on a boat.'],
  'L AY V Z': ['The crew saved their *lives*.', 'All our *lives* we have known the sea.'],
  'K L OW Z': [
    'Please *close* the gate.',
    'The shop will *close* at six.',
    'Bram ran to *close* the door.',
    'Did you *close* the hatch?',
  ],
  'K L OW S': [
    'The ferry came *close* to the rocks.',
    'They sat *close* to the fire.',
    'That was a *close* race.',
  ],
  'Y UW Z': [
    'You can *use* my net.',
    'We *use* a rope to pull the boat in.',
    'May I *use* the boat?',
    'Do not *use* the old rope.',
  ],
  'Y UW S': [
    'It is no *use* to shout.',
    'What is the *use* of a net with holes?',
    'The *use* of flares is not allowed.',
  ],
  'T IH R': ['A *tear* ran down her cheek.', 'There was a *tear* in his eye.'],
  'T EH R': ['Do not *tear* the sail.', 'The wind will *tear* the flag.', 'There is a *tear* in my coat.'],
  'B OW': ['She had a red *bow* in her hair.', 'Tie the *bow* again.', 'He shot an arrow from his *bow*.'],
  'B AW': ['The actor took a *bow*.', 'Waves broke over the *bow* of the ship.'],
  'R OW': ['They sat in a *row*.', 'We can *row* to the island.', 'The first *row* of seats is wet.'],
  'W UW N D': ['The *wound* on his leg was small.', 'Wilma put a bandage on the *wound*.'],
  'W AW N D': ['She *wound* the rope round the post.', 'The path *wound* up the hill.'],
  'M IH N AX T': ['Wait a *minute*!', 'The ferry leaves in one *minute*.'],
  'M AY N UW T': ['There were *minute* grains of salt on the deck.'],
  'P R EH Z AX N T': ['Otto got a *present* from Wilma.', 'All forty pupils were *present*.'],
  'P R IY Z EH N T': ['They will *present* the cup to Bram.'],
  'AA B JH EH K T': ['A shiny *object* lay on the sand.'],
  'AX B JH EH K T': ['The fishermen *object* to the new rules.'],
  'R EH K ER D': ['He broke the school *record*.'],
  'R IH K AO R D': ['They *record* the tides each day.', 'Press this to *record* your song.'],
  'D EH Z ER T': ['A camel can cross the *desert*.'],
  'D IH Z ER T': ['Rats *desert* a sinking ship.'],
  'HH AW S': ['The *house* on the hill is white.', 'Our *house* is near the quay.'],
  'HH AW Z': ['This shed can *house* ten boats.'],
  'D AH V': ['A white *dove* sat on the mast.'],
  'D OW V': ['Bram *dove* into the cold water.'],
  'S OW': ['In spring they *sow* beans behind the school.'],
  'S AW': ['The *sow* and her piglets slept in the straw.'],
  'B EY S': ['Otto plays the *bass* in a band.'],
  'B AE S': ['They caught a *bass* off the pier.', 'We had grilled *bass* for tea.'],
  'IH K S K Y UW S': ['That is no *excuse* for being late.'],
  'IH K S K Y UW Z': ['*Excuse* me, is this the ferry?'],
  'S EH P ER AX T': ['The twins sleep in *separate* rooms.'],
  'S EH P AX R EY T': ['You must *separate* the big fish from the small.'],
  'P AA L IH SH': ['Bram has to *polish* the brass bell.'],
  'P OW L IH SH': ['The captain of the *Polish* ship waved.'],
  'R IY D IH NG': ['Ines is *reading* by the window.'],
  'P R AX T EH S T': ['The crew will *protest* against the plan.'],
  'P R OW T EH S T': ['There was a *protest* at the harbour.'],
  'K AA N T EH S T': ['She won the kite *contest*.'],
  'P R AA JH EH K T': ['Our class *project* is about gulls.'],
  'P R AX JH EH K T': ['Our films *project* onto the wall.'],
  'T EH R Z': ['He *tears* the paper into strips.'],
  'T IH R Z': ['Her eyes filled with *tears*.', 'Wilma burst into *tears*.'],
  'R EH K ER D Z': ['She keeps *records* of each trip.'],
  'K AA N T EH N T': ['The *content* of the box was secret.'],
  'K AX N T EH N T': ['The cat was *content* to sleep in the sun.'],
  'S UW ER': ['A rat ran out of the *sewer*.'],
};
const table = Object.entries(places).flatMap(([said, sentences]) =>
  sentences.map((sentence) => [sentence, said] as const),
);

describe('a homograph in a sentence', () => {
  test.each(table)('in “%s” is pronounced %s', (sentence, said) => {
    const { word, reading } = read(sentence);
    expect(analyzer.analyze(word).readings[reading]?.pronunciation).toBe(said);
  });
});

function read(sentence: string): { word: string; reading: number; margin: number } {
  const [before = '', word = '', after = ''] = sentence.split('*');
  const text = before + word + after;
  const context = readContext(text, before.length, before.length + word.length);
  return { word, reading: -1, margin: 0, ...chooseReading(word, context.before, context.after) };
}

describe('sentences as in children’s books', () => {
  const sentences = readFileSync(new URL('words/homograph-sentences.tsv', import.meta.url), 'utf8')
    .split('\n')
    .filter((line) => /^\d\t/.test(line))
    .map((line) => {
      const [reading, sentence] = line.split('\t');
      const chosen = read(sentence!);
      return {
        line,
        word: chosen.word.toLowerCase(),
        right: Number(reading),
        chosen,
        sure: chosen.margin >= SURE,
      };
    });

  test('both readings of each homograph are chosen for some sentence', () => {
    const reached = new Set(
      sentences
        .filter(({ right, chosen, sure }) => sure && chosen.reading === right)
        .map(({ word, right }) => `${word} ${right}`),
    );
    const missing = HOMOGRAPHS.flatMap((word) => [`${word} 0`, `${word} 1`]).filter((id) => !reached.has(id));
    expect(missing).toEqual([]);
  });

  test('at most 1.5% of the sure readings are wrong, and at most 3% of sentences are unsure', () => {
    const sure = sentences.filter((one) => one.sure);
    const wrong = sure.filter(({ chosen, right }) => chosen.reading !== right).map(({ line }) => line);
    expect(wrong.length / sure.length, wrong.join('\n')).toBeLessThanOrEqual(0.015);
    expect(sure.length / sentences.length).toBeGreaterThanOrEqual(0.97);
  });
});

describe('a text with both readings', () => {
  const knowsLongEa = parseGroup({
    name: 'Plovers',
    sequence: null,
    step: 0,
    alsoTaught: ['r', 'd', 'ea-long-e'],
    notYet: [],
    bySight: ['we', 'can', 'she', 'the', 'map'],
    names: [],
    options: {},
  });
  const judge = createJudge(analyzer, compileGroup(knowsLongEa, null));

  test('the key names the reading if the reading is clear, and no reading if it is unclear', () => {
    expect(keysOf('We can read. She read the map.')).toEqual('we can read#0 she read#1 the map'.split(' '));
    expect(keysOf('read')).toEqual(['read']);
    expect(keysOf('House')).toEqual(['house#0']);
    expect(keysOf('boat')).toEqual(['boat']);
    expect(keysOf('They were on the Polish ship')).toContain('Polish#1');
  });

  test('each reading has its own standing, and a word whose reading is unclear is unsure', () => {
    expect(judge('read#0').standing).toBe('reads');
    expect(judge('read#1').standing).toBe('beyond');
    expect(judge('read').standing).toBe('unsure');
  });

  test('readings are one word in the report unless their standings differ', () => {
    const counts = (text: string) => keysOf(text).map((key) => [key, 1] as const);
    const report = (text: string) =>
      vet({ words: counts(text), skipped: 0 }, judge).words.map(({ word, standing, count }) => [
        word,
        standing,
        count,
      ]);
    expect(report('We can read. She read the map.')).toEqual(
      expect.arrayContaining([
        ['read', 'reads', 1],
        ['read', 'beyond', 1],
      ]),
    );
    expect(report('We can read. Read the map. Can she read?')).toContainEqual(['read', 'reads', 3]);
  });

  test('a reading number that does not exist is ignored', () => {
    expect(analyzer.analyze('read#7')).toEqual(analyzer.analyze('read'));
    expect(analyzer.analyze('boat#1').readings).toEqual(analyzer.analyze('boat').readings);
  });
});

// Outside source: Wikipedia homograph data (Gorman, Mazovetskiy and Nikolaev 2018), training part, by cross-validation.
// Published results on the other part: majority 84.1%, part of speech alone 95.5% (from memory, read second hand).
const measured = measureHomographs();
test.skipIf(!measured)('98% of readings are chosen right, and 98.7% of the readings that a key names', () => {
  expect(measured!.macro).toBeGreaterThanOrEqual(0.98);
  expect(measured!.micro).toBeGreaterThanOrEqual(0.978);
  expect(measured!.sureRight).toBeGreaterThanOrEqual(0.987);
  expect(measured!.sure).toBeGreaterThanOrEqual(0.96);
});

const examples = readExamples();
const more = readMoreExamples();
test.skipIf(!examples || !more)('the stored weights are the weights that the training gives', () => {
  expect(fitWeights([...examples!, ...more!]), 'run npx tsx src/data/homographs/train.ts').toEqual(weights);
});

function keysOf(text: string): string[] {
  return tokenize(text).map(({ key }) => key);
}
