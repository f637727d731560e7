import type { SpellingChange } from '../../analyze/types.ts';

/** The teacher's sentence about a spelling change. */
export const changeRules: Readonly<Record<SpellingChange, string>> = {
  none: 'Nothing changes: write the base, then the ending.',
  double:
    'A base of one syllable that ends in one vowel letter and one consonant letter doubles the consonant before an ending that begins with a vowel.',
  'drop-e': 'A base that ends in a silent e loses it before an ending that begins with a vowel.',
  'f-to-v': 'The f of some nouns becomes v before -s: leaf, leaves.',
  'y-to-i': 'A y after a consonant becomes i before an ending, unless the ending begins with i.',
};

/** Before -ly there is one l: simple, simply. */
export const leRule = 'A base that ends in -le drops -le before -ly.';

/** The spelling changes in few words, for a row of the key. */
export const changeNames: Readonly<Record<SpellingChange, string>> = {
  none: 'no change',
  double: 'double the final consonant',
  'drop-e': 'drop the e',
  'y-to-i': 'change y to i',
  'f-to-v': 'change f to v',
};

/** The meaning of an ending or beginning, by its letters and kind; common practice, no source. */
export const affixMeanings: Readonly<Record<string, string>> = {
  '-s': '-s: more than one, or what he, she or it does.',
  '-es': '-es is -s as a syllable of its own, after a hissing sound.',
  '-ed': '-ed: it has happened.',
  '-ing': '-ing: it is going on.',
  '-er': '-er: more so; or one who does it.',
  '-est': '-est: the most so.',
  '-y': '-y: full of it, or like it.',
  '-ly': '-ly: in that way.',
  '-ful': '-ful: full of it.',
  '-less': '-less: without it.',
  '-ness': '-ness: being so.',
  '-ment': '-ment: the doing of it, or what comes of it.',
  '-able': '-able: it can be done.',
  '-ible': '-ible: it can be done.',
  '-ish': '-ish: a little so.',
  '-en': '-en: to make so, or made of it.',
  '-ous': '-ous: full of it.',
  '-ion': '-ion: the doing of it.',
  '-or': '-or: one who does it.',
  '-ist': '-ist: one who does it or knows about it.',
  '-th': '-th: which one in the row.',
  '-teen': '-teen: ten more.',
  '-ty': '-ty: that many tens.',
  '-hood': '-hood: being it.',
  '-ship': '-ship: being it.',
  '-ward': '-ward: in that direction.',
  'un-': 'un-: not, or the other way round.',
  're-': 're-: again, or back.',
  'dis-': 'dis-: not, or the opposite.',
  'mis-': 'mis-: wrongly.',
  'pre-': 'pre-: before.',
  'in-': 'in-: not, or into.',
  'im-': 'im- is in- before p, b or m.',
  'non-': 'non-: not.',
  'over-': 'over-: too much, or above.',
  'under-': 'under-: too little, or below.',
  'sub-': 'sub-: under.',
  'out-': 'out-: away, or better than.',
  'up-': 'up-: upwards.',
  'mid-': 'mid-: in the middle of.',
  'a-': 'a-: in, on or at.',
  'fore-': 'fore-: before, or at the front.',
  'en-': 'en-: to make so, or put into.',
  'de-': 'de-: off, or the opposite.',
};
