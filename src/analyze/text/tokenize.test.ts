import { describe, expect, test } from 'vitest';
import { splitKey } from '../homographs/word-key.ts';
import { tokenize } from './tokenize.ts';

/** Returns the words of the keys in a text. Skipped pieces are in square brackets, as written in the text. */
function keys(text: string): string {
  return tokenize(text)
    .map(({ kind, key, start, end }) =>
      kind === 'word' ? splitKey(key).word : `[${text.slice(start, end)}]`,
    )
    .join(' ');
}

describe('words', () => {
  test.each([
    ['Gulls circle the quay.', 'gulls circle the quay'],
    ["Don't tip the boat", "don't tip the boat"],
    ['Don’t tip the boat', "don't tip the boat"],
    ['well-kept ropes', 'well kept ropes'],
    ['a half-mended net—and rain', 'a half mended net and rain'],
    ['har\u00ADbour', 'harbour'],
    ['a café by the quay', 'a café by the quay'],
    ['cafe\u0301', 'café'],
    ['one/two and/or', 'one two and or'],
    ['light\u200Bhouse, sea\u2060wall', 'lighthouse seawall'],
    ['\uFB01sh and \uFF53\uFF45\uFF41', 'fish and sea'],
    ['mid\u2011water and mid\u2010tide', 'mid water and mid tide'],
    ['the rope\u00A0end', 'the rope end'],
    ['Nets!Ropes?Crates', 'nets Ropes Crates'],
    ['ice-cream for two-thirds of us', 'ice cream for two thirds of us'],
    ['Shh, hmm, brr', 'shh hmm brr'],
    ['e\u0301tude by Zo\u00EB', 'étude by Zoë'],
    ['storm\nand calm', 'storm and calm'],
    ['gulls 🦀 crabs', 'gulls crabs'],
    ['(crates) [of] {salt}', 'crates of salt'],
    ['', ''],
    ['…—!', ''],
  ])('%j', (text, expected) => {
    expect(keys(text)).toBe(expected);
  });

  test('spans are places in the text as given', () => {
    const text = 'The har\u00ADbour’s edge';
    expect(tokenize(text).map(({ start, end }) => text.slice(start, end))).toEqual([
      'The',
      'har\u00ADbour’s',
      'edge',
    ]);
  });
});

describe('apostrophes and quotation marks', () => {
  test.each([
    ["the gulls' nests", "the gulls' nests"],
    ['the fishermen’s huts', "the fishermen's huts"],
    ['‘Mind the ropes’ said Otto', 'mind the ropes said Otto'],
    ["'Mind the ropes' said the man", 'mind the ropes said the man'],
    ['“Cast off,” said Wilma.', 'cast off said Wilma'],
    ["the boats'", 'the boats'],
    ["rock 'n' roll", 'rock [n] roll'],
    ["rock'n'roll", "rock'n'roll"],
    ['Don´t, can`t, isn‛t, won′t', "don't can't isn't won't"],
    ['She’d’ve swum', "she'd've swum"],
    ['’Twas cold and ’tis wet', 'twas cold and tis wet'],
    ["It is six o'clock, ma'am", "it is six o'clock ma'am"],
    ["the boys' and girls' boats", "the boys' and girls' boats"],
    ["'Tide's in,' he said. 'Tide's out,' she said", "tide's in he said tide's out she said"],
    ["the 's' and the ‘sh’", 'the [s] and the sh'],
    ['a dog’s’', "a dog's"],
  ])('%j', (text, expected) => {
    expect(keys(text)).toBe(expected);
  });
});

describe('capitals', () => {
  test.each([
    ['Then Duke ran.', 'then Duke ran'],
    ['Duke ran. Then he sat.', 'duke ran then he sat'],
    ['“We wait,” said Bram. “You go.”', 'we wait said Bram you go'],
    ['On Monday I met Ines', 'on Monday i met Ines'],
    ["Today I'm at sea and I'll wave", "today i'm at sea and i'll wave"],
    ['Storm Keeps Marigold In Harbour', 'storm keeps marigold in harbour'],
    ['They met Bram Falk, Wilma Falk.', 'they met Bram Falk Wilma Falk'],
    ['FERRY LATE AGAIN', 'ferry late again'],
    ['He cried STOP to Otto', 'he cried STOP to Otto'],
    ['She waved.\n\nOdd waved back', 'she waved odd waved back'],
    [
      'All of the long afternoon the gulls cried over the\n      Marigold',
      'all of the long afternoon the gulls cried over the Marigold',
    ],
    ['Mr. Falk and Mrs Falk', '[Mr.] Falk and [Mrs] Falk'],
    ["with O'Brien", "with O'brien"],
    ['with McCoy', 'with Mccoy'],
    ['We met… Then she left... But not Otto', 'we met then she left but not Otto'],
    ['A bell (Bram rang it)', 'a bell Bram rang it'],
    ['He said: Go home. She said, ‘Stop!’', 'he said go home she said stop'],
    ['3. Ropes\n4. Nets', '[3] ropes [4] nets'],
    ['• Crabs • Cod', 'crabs cod'],
    ['12 Boats sank', '[12] boats sank'],
    ['At 5 p.m. ‘Boats left', 'at [5] [p.m.] boats left'],
    ['At 5 p.m. The boat left', 'at [5] [p.m.] the boat left'],
    ['for the U.S. Navy', 'for the [U.S.] Navy'],
    ['at St. Bram near Mt. Otto', 'at [St.] Bram near [Mt.] Otto'],
    ['Then The Marigold sank', 'then The Marigold sank'],
    ['Only They know. So Isn’t it odd', "only they know so isn't it odd"],
    ['A Week on the Quay', 'a week on the quay'],
    ['The Lost Lamp', 'the lost lamp'],
    ['The Night the Lamp Went Out', 'the night the lamp went out'],
    ['Captain Wilma Falk', 'captain Wilma Falk'],
    ['The Lost Lamp was sold by Otto', 'the Lost Lamp was sold by Otto'],
    ['In Tarn Quay Wilma met Bram', 'in Tarn Quay Wilma met Bram'],
    ['“The tide,” said Ines—“Bram knows.”', 'the tide said Ines bram knows'],
    ['Otto:\nTides turn', 'otto tides turn'],
  ])('%j', (text, expected) => {
    expect(keys(text)).toBe(expected);
  });
});

describe('the sign of a capital', () => {
  test.each([
    ['Gulls met Duke', 'Gulls^ met Duke'],
    ['The Lost Lamp', 'the Lost^ Lamp^'],
    ['FERRY LATE AGAIN', 'Ferry^ Late^ Again^'],
    ['IT HELPS US ALL', 'it Helps^ us all'],
    ['The UK and NATO met the US', 'the UK and NATO met the US'],
    ['He ran to Tarn Quay School', 'he ran to Tarn+ Quay+ School+'],
    ['We saw The Crown and the White House', 'we saw The+ Crown+ and the White+ House+'],
    ['said the White House on Monday', 'said the White+ House+ on Monday'],
    ['The Harbour is big', 'the Harbour is big'],
    ['They ran from the Attack of the Clams', 'they ran from the Attack+ of the Clams+'],
    ['McCoy ran to YouTube', 'Mccoy+ ran to Youtube+'],
    [
      'sang “Old Boats,” “The Long Tide” and “Kelp” to us',
      'sang Old+ Boats+ The+ Long+ Tide+ and Kelp+ to us',
    ],
    ['“Hello Bram,” said Ines', 'Hello~ Bram+ said Ines='],
    ['“Good Big Boats,” said Ines', 'Good+ Big+ Boats+ said Ines='],
    ['she sang “Rough Water” to us', 'she sang Rough+ Water+ to us'],
    ['they signed the “Terms of Sale” there', 'they signed the Terms^ of Sale= there'],
    ['we sailed with Bram King and Wilma Falk', 'we sailed with Bram+ King+ and Wilma+ Falk+'],
    ['the Office for Boats and Nets is shut', 'the Office= for Boats+ and Nets+ is shut'],
    ['We met Wilma B. Falk there', 'we met Wilma+ Falk there'],
    ['They took Plan B. Then they ran', 'they took Plan+ then they ran'],
    ['the PhD of Ines', 'the of Ines='],
    ['we met at Pier 9 for Step 2', 'we met at Pier+ for Step'],
    ['it has a Smart TV now', 'it has a Smart+ now'],
    ['Rough Water is calm', 'Rough~ Water+ is calm'],
    ['Both Harbours are near', 'Both~ Harbours are near'],
    ['she came on Good Friday, not on Friday', 'she came on Good+ Friday+ not on Friday'],
    ["a cake for Mother's Day there", "a cake for Mother's+ Day+ there"],
    ['we saw Wilma King and The King there', 'we saw Wilma+ King+ and The+ King+ there'],
    ["at Falk's House, Falk's Biscuit", "at Falk's+ House+ Falk's Biscuit"],
    ['we saw the Head of Modern Boats there', 'we saw the Head of Modern Boats there'],
    ['we saw the King of the Tarn Isles there', 'we saw the King of the Tarn+ Isles+ there'],
    ['said White House Press Secretary Ann Hill', 'said White+ House+ Press+ Secretary+ Ann+ Hill+'],
    ['Maple Grove School is shut', 'Maple+ Grove+ School+ is shut'],
    ['Yesterday Bram Falk sailed', 'Yesterday~ Bram+ Falk+ sailed'],
    ['We met Captain Falk and Mr. Brown', 'we met Captain Falk+ and Brown+'],
    [
      'He sat on King Street by the University of Skarvik',
      'he sat on King+ Street+ by the University+ of Skarvik+',
    ],
    ["nets by Bram's Marigold", "nets by Bram's= Marigold"],
    ['Customer Service Desk', 'Customer~ Service Desk'],
    ['We met Bram, Wilma, Ines and Otto', 'we met Bram= Wilma Ines+ and Otto+'],
    [
      'They sail to Skarvik in the Tide, for Free, with the Captain',
      'they sail to Skarvik in the Tide= for Free= with the Captain',
    ],
    [
      'We had 450 Gulls and the Non-stop list, see Figure 2',
      'we had Gulls= and the Non stop list see Figure',
    ],
    ['they speak Polish in Tarn', 'they speak Polish#1 in Tarn='],
    ['TQNews said that DIYers like it', 'Tqnews+ said that Diyers= like it'],
    ['Bram Falk/Tide Pictures/Skarvik News', 'Bram+ Falk+ Tide+ Pictures+ Skarvik+ News+'],
    ['Rope/Net, Mon/Wed/Fri', 'Rope^ Net Mon Wed Fri'],
    ['they had signs with “Less Kelp Here, More Crabs.”', 'they had signs with Less~ Kelp+ Here+ more Crabs'],
    ['we are the “Three Gulls.”', 'we are the Three+ Gulls+'],
    ['Read the Lead Act', 'read#0 the Lead+ Act+'],
  ])('%j', (text, expected) => {
    const words = tokenize(text).filter(({ kind }) => kind === 'word');
    expect(words.map(({ key }) => key).join(' ')).toBe(expected);
  });
});

describe('pieces that are left out', () => {
  test.each([
    ['at 10:45 on the 3rd', 'at [10:45] on the [3rd]'],
    ['1,200 crates cost £2.50', '[1,200] crates cost [2.50]'],
    ['x2 and H2O', '[x2] and [H2O]'],
    ['see www.tarnquay.example/news now', 'see [www.tarnquay.example/news] now'],
    ['visit https://tarnquay.example.', 'visit [https://tarnquay.example]'],
    [
      'open logs/tide.txt, or C:\\logs\\tide and /logs/tide',
      'open [logs/tide.txt] or [C:\\logs\\tide] and [/logs/tide]',
    ],
    [
      'the chil-\ndren and a well-kept boat -\nthe Marigold',
      'the children and a well kept boat the Marigold',
    ],
    ['Chil-\r\ndren ran, Tarn-\nQuay too', 'children ran Tarn quay too'],
    ['well-\nkept nets and self-\nmade ones, a shelf-\nful', 'well kept nets and self made ones a shelfful'],
    ['he/she/they hid and/or ran', 'he she they hid and or ran'],
    ['half is \\frac{1}{2}[edit] here', 'half is [\\frac] [1] [2] [[edit]] here'],
    ['mail ines@quay.example today', 'mail [ines@quay.example] today'],
    ["mail o'brien@quay.example", "mail [o'brien@quay.example]"],
    ['see r.https://quay.example/net', 'see [r.] [https://quay.example/net]'],
    ['#marigold and @quay', '[#marigold] and [@quay]'],
    ['the U.S. coast, e.g. here', 'the [U.S.] coast [e.g.] here'],
    ['on TV', 'on [TV]'],
    ['10 km off, 3 lb of cod at 6 pm', '[10] [km] off [3] [lb] of cod at [6] [pm]'],
    ['He sat. She ran.', 'he sat she ran'],
    ['Sat. 3 May, Mon. and Sun., vol. 2', '[Sat.] [3] May [Mon.] and [Sun.] [vol.] [2]'],
    ['We saw the sun. The CEOs left etc', 'we saw the sun the [CEOs] left [etc]'],
    ['Gen. Falk met the Rep. of Tarn', '[Gen.] Falk met the [Rep.] of Tarn'],
    ['plan B', 'plan [B]'],
    ['λόγος by the quay', '[λόγος] by the quay'],
    ['the Дом and 家', 'the [Дом] and [家]'],
    ['snake_case, camelCase, eBay', '[snake_case] [camelCase] [eBay]'],
    ['It is -3°C, 50% off, 3.14, 12/3/2031', 'it is [3] [C] [50] off [3.14] [12/3/2031]'],
    ['from the 1990s and ’90s', 'from the [1990s] and [90s]'],
    ['5pm, 10km and 1st', '[5pm] [10km] and [1st]'],
    ['a 21st-century boat', 'a [21st] century boat'],
    ['an X-ray and a T-shirt', 'an [X] ray and a [T] shirt'],
    ['TVs and DVDs', '[TVs] and [DVDs]'],
    ['Dr Falk, Ms Ivy and Mrs. Falk', '[Dr] Falk [Ms] Ivy and [Mrs.] Falk'],
    ['see quay.example/map?x=1 and tide.org.', 'see [quay.example/map?x=1] and [tide.org]'],
    ['ropes, nets, etc. in a shed', 'ropes nets [etc.] in a shed'],
    ['mail (ines.falk@quay.example)', 'mail [ines.falk@quay.example]'],
    ['a@b and c @ d', 'a [b] and [c] [d]'],
    ['⚓ ahoy 🦀', 'ahoy'],
    ['No. 7 is not. No more', '[No.] [7] is not no more'],
    [`a ${'x'.repeat(130)}y quay`, `a [${'x'.repeat(130)}y] quay`],
  ])('%j', (text, expected) => {
    expect(keys(text)).toBe(expected);
  });
});

// Outside source: Intl.Segmenter (ICU's word boundaries, Unicode Standard Annex 29).
test('plain prose is cut at the word boundaries of Unicode', () => {
  const prose =
    'The Marigold lay at the quay all night. Rain beat on the deck, and nobody came to untie her. By dawn the ' +
    'wind had dropped; a pale sun rose over the fish market, and forty gulls began to shout.';
  const segments = [...new Intl.Segmenter('en', { granularity: 'word' }).segment(prose)];
  const words = segments.filter(({ isWordLike }) => isWordLike).map(({ segment }) => segment);
  expect(tokenize(prose).map(({ start, end }) => prose.slice(start, end))).toEqual(words);
});
