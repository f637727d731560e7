/** The form of a table's column. */
interface Column {
  readonly name: string;
  readonly form: RegExp;
  /** The format in words, for messages. */
  readonly says: string;
}

export interface SourceTable {
  readonly columns: readonly Column[];
  /** How many columns, from the first, form the key of a row. Rows are sorted by key, and each key is unique. */
  readonly keys: number;
}

const PHONE =
  '(?:(?:AA|AE|AH|AO|AW|AY|EH|ER|EY|IH|IY|OW|OY|UH|UW)[012]|B|CH|D|DH|F|G|HH|JH|K|L|M|N|NG|P|R|S|SH|T|TH|V|W|Y|Z|ZH)';
const SAID = `${PHONE}(?: ${PHONE})*`;

const column = (name: string, form: RegExp, says: string): Column => ({ name, form, says });
const word = (name: string): Column => column(name, /^[a-z]+(?:['-][a-z]+)*$/, 'one word in small letters');
const words = (name: string): Column =>
  column(name, /^[a-z]+(?:[ '-][a-z]+)*$/, 'words in small letters, a space between them');
const text = (name: string): Column => column(name, /^\S(?:.*\S)?$/, 'a text without spaces around it');
const choice = (name: string, ...of: readonly string[]): Column =>
  column(name, new RegExp(`^(?:${of.join('|')})$`), of.join(' or '));
const said = (name: string): Column =>
  column(
    name,
    new RegExp(`^${SAID}(?: / ${SAID})*$`),
    'phones of CMUdict, a vowel with its stress behind it as in AE1 B IY0, and " / " between two ways to say it',
  );

/** The tables of src/data/source that have a header. The README of that folder explains the purpose of each table. */
export const sourceTables: Readonly<Record<string, SourceTable>> = {
  'british-readings.tsv': {
    columns: [
      word('word'),
      column(
        'units',
        /^[a-z_']+:[A-Z.-]+(?:=[A-Z.-]+)?(?:( \/)? [a-z_']+:[A-Z.-]+(?:=[A-Z.-]+)?)*$/,
        'letters, a colon and sounds for each unit, an = before how they are heard where that is not told by them, and " / " between two readings',
      ),
      text('reason'),
    ],
    keys: 1,
  },
  'homographs.tsv': { columns: [word('word'), said('pronunciations'), text('note')], keys: 1 },
  'irregular-forms.tsv': {
    columns: [
      word('lemma'),
      choice('part', 'n', 'v', 'a', 'r'),
      choice('form', 's', 'past', 'participle', 'ing', 'er', 'est'),
      words('text'),
      text('reason'),
    ],
    keys: 3,
  },
  'meanings.tsv': {
    columns: [word('word'), column('meaning', /^\S.{0,68}\S$/, 'a text of at most 70 letters')],
    keys: 1,
  },
  'morphology-allow.tsv': {
    columns: [
      word('word'),
      word('base'),
      word('affix'),
      choice('kind', 'suffix', 'prefix', 'compound'),
      choice('change', 'none', 'double', 'drop-e', 'y-to-i'),
      text('reason'),
    ],
    keys: 1,
  },
  'morphology-deny.tsv': { columns: [word('word'), text('reason')], keys: 1 },
  'ordinary-words.tsv': { columns: [word('word'), text('reason')], keys: 1 },
  'pronunciations.tsv': { columns: [word('word'), said('pronunciation'), text('reason')], keys: 1 },
  'units.tsv': {
    columns: [
      word('word'),
      column(
        'units',
        /^[a-z_']+:[A-Z.-]+(?: [a-z_']+:[A-Z.-]+)*$/,
        'letters, a colon and sounds for each unit',
      ),
      text('reason'),
    ],
    keys: 1,
  },
};
