/**
 * Very common words that are often taught by sight. A list of nothing else is a list of by-sight words.
 * Source: E. W. Dolch, A Basic Sight Vocabulary, The Elementary School Journal 36 (1936). The last two rows are words
 * with unusual spellings that schools add to the list (common practice, no source).
 */
export const commonWords: ReadonlySet<string> = new Set(
  [
    'a about after again all always am an and any are around as ask at away be because been before best both by',
    'call came carry come could did do does done down every find for four from full gave get give go goes going',
    'good had has have he her here him his hold how I i if in into is it its just kind know laugh let light like',
    'little live look made make many may me much must my myself never new no not now of off old on once one only',
    'open or our out over own play please pretty pull put ran read round said saw say see shall she show small so',
    'some soon start take tell thank that the their them then there these they think this those to today together',
    'too try two under up upon us use very walk want warm was wash we well went were what when where which white',
    'who why will wish with work would yes you your water people friend where Mr Mrs mr mrs',
    'answer anyone anything beautiful brother build busy buy door ear earth enough eye eyes everyone father great half',
    'heard hour island learn lose love month most mother move poor school shoe should someone something sugar sure talk whole whose',
  ].flatMap((row) => row.split(' ')),
);
