import { readStepHeading } from '../../src/analyze/sequence-import/step-heading.ts';

/** Writes an annotated text in another layout with the same meaning. Returns null if there is nothing to change. */
export type Relay = (annotated: string) => string | null;

const isTable = (text: string) => text.split('\n').filter((line) => line.trim().includes('\t')).length > 3;

/** Writes the rows of a table in another notation. */
const ofRows =
  (change: (rows: readonly (readonly string[])[]) => readonly string[]): Relay =>
  (text) => {
    const lines = text.split('\n');
    const first = lines.findIndex((line) => line.includes('\t'));
    if (!isTable(text)) return null;
    const rows = lines.slice(first).filter((line) => line.trim() !== '');
    return [...lines.slice(0, first), ...change(rows.map((row) => row.split('\t')))].join('\n');
  };

const quoted = (cell: string) => `"${cell.trim().replaceAll('"', '""')}"`;

/** Changes the lines of a list. Returns null for a table. */
const ofList =
  (change: (text: string) => string): Relay =>
  (text) =>
    isTable(text) ? null : change(text);

/** The smallest number of lines with numbers or dates that form a list of steps. */
const FEWEST = 8;

/** Puts another name before the content that each line of a list teaches: "Week 3: sh" for "3. sh". */
const named = (name: (step: number) => string): Relay =>
  ofList((text) => {
    let step = 0;
    const lines = text.split('\n').map((line) => {
      const [, before = '', title = '', meaning = '', after = ''] =
        /^([^⟦]{0,20})⟦¶([^⟧]+?)( => [^⟧]+)?⟧(.*)$/u.exec(line) ?? [];
      const heading = readStepHeading(before + title);
      const rest = heading?.rest ?? '';
      const whole = /unit|phase|term|quarter|year|month|grade|part/.test(heading?.kind ?? 'year');
      if (whole || rest === '' || !title.includes(rest)) return line;
      step += 1;
      return `⟦¶${name(step)}${title.slice(title.indexOf(rest))}${meaning}⟧${after}`;
    });
    return step < FEWEST ? text : lines.join('\n');
  });

const MONTHS = ['Sept', 'Oct', 'Nov', 'Dec', 'Jan', 'Feb', 'Mar', 'Apr', 'May', 'June'];
const month = (step: number) => Math.floor((step - 1) / 4) % MONTHS.length;
const day = (step: number) => ((step - 1) % 4) * 7 + 2;
const slashed = (step: number, later = 0) => `${((month(step) + 8) % 12) + 1}/${day(step) + later}`;
const spoken = (step: number) => `${MONTHS[month(step)]} ${day(step)}`;

const ofClauses =
  (change: (clause: string, meaning: string) => string): Relay =>
  (text) =>
    text.replace(
      /⟦(¶?)([^⟧]+?) => ([^⟧]+)⟧/gu,
      (_, mark, clause, meaning) => `⟦${mark}${change(clause, meaning)} => ${meaning}⟧`,
    );

/** Changes clauses that are lists of letters with commas. */
const ofLetters = (change: (letters: readonly string[]) => string): Relay =>
  ofClauses((clause, meaning) =>
    /^(?:-?[a-z]{1,4}-?|[aeiou]_e)(?:, (?:-?[a-z]{1,4}-?|[aeiou]_e))+$/.test(clause) &&
    !/^(?:words:.*|-)$/.test(meaning.trim())
      ? change(clause.split(', '))
      : clause,
  );

/** Changes lists of by-sight words. */
const ofWords = (change: (words: readonly string[]) => string): Relay =>
  ofClauses((clause, meaning) =>
    meaning.trim().startsWith('words:') && /^[\w']+(?:, [\w']+)+$/.test(clause)
      ? change(clause.split(', '))
      : clause,
  );

/** Changes examples in round brackets after a clause. */
const ofExamples = (change: (words: string) => string): Relay => {
  const bracketed = /⟧ \(([a-z]+(?:, [a-z]+)*)\)/g;
  return (text) => text.replace(bracketed, (_, words: string) => `⟧${change(words)}`);
};

const wrapped = (before: string, after: string) =>
  ofLetters((all) => all.map((one) => before + one + after).join(', '));
const lastBy = (joint: string) => (all: readonly string[]) =>
  `${all.slice(0, -1).join(', ')}${joint}${all.at(-1)}`;
const split = (between: string) => ofClauses((clause) => clause.replace(/\b([aeiou])_e\b/g, `$1${between}e`));
const bullets = (sign: string) =>
  ofList((text) => text.replace(/^([ \t]*)[-•*] /gm, (_, indent: string) => `${indent}${sign}`));

/** Ways to lay out the same sequence. Common practice, no source. */
export const relays: Readonly<Record<string, Relay>> = {
  'bars between cells': ofRows((rows) => rows.map((row) => row.join(' | '))),
  'cells in quotes': ofRows((rows) => rows.map((row) => row.map(quoted).join(','))),
  'an empty column': ofRows((rows) =>
    rows.map(([first = '', ...others]) => [first, '', ...others].join('\t')),
  ),
  'empty rows': ofRows((rows) => rows.flatMap((row) => [row.join('\t'), row.map(() => '').join('\t')])),
  'no names of columns': ofRows((rows) => rows.slice(1).map((row) => row.join('\t'))),
  'names of columns with the word week': ofRows(([[first = '', ...others] = [], ...body]) =>
    [[first, ...others.map((name) => `${name} this week`)], ...body].map((row) => row.join('\t')),
  ),
  'names of columns in capitals': ofRows(([head = [], ...body]) => [
    head.join('\t').toUpperCase(),
    ...body.map((row) => row.join('\t')),
  ]),
  'weeks with a colon': named((step) => `Week ${step}: `),
  'weeks without a sign': named((step) => `Wk ${step} `),
  'lessons with a dash': named((step) => `Lesson ${step} – `),
  'numbers with a stop': named((step) => `${step}. `),
  'numbers with a bracket': named((step) => `${step}) `),
  'days in bullets': named((step) => `• Day ${step}: `),
  'dates in brackets': named((step) => `Session ${step} (${slashed(step)}) `),
  'weeks of a date': named((step) => `Week of ${spoken(step)}: `),
  'dates in words with a dash': named((step) => `${spoken(step)} - `),
  'dates in words without a sign': named((step) => `${spoken(step)} `),
  'dates without a sign': named((step) => `${slashed(step)} `),
  'days of the week and dates': named((step) => `${step % 2 === 0 ? 'Thu' : 'Tue'} ${slashed(step)} `),
  'first and last dates': named((step) => `${slashed(step)}-${slashed(step, 4)} `),
  'dates of a week in brackets': named((step) => `Week ${step} (${spoken(step)}-${day(step) + 4}): `),
  'no empty lines': ofList((text) => text.replace(/\n\s*\n/g, '\n')),
  'empty lines before each step': ofList((text) => text.replace(/\n(?=[^\n]*¶)/g, '\n\n')),
  'round bullets': bullets('o '),
  'bullets and tabs': bullets('•\t'),
  'dashes for bullets': bullets('– '),
  'slashes between letters': ofLetters((all) => all.join('/')),
  'semicolons between letters': ofLetters((all) => all.join('; ')),
  'and before the last letters': ofLetters(lastBy(' and ')),
  'an ampersand before the last letters': ofLetters(lastBy(' & ')),
  'plus signs between letters': ofLetters((all) => all.join(' + ')),
  'blanks between letters': ofLetters((all) => all.join(' ')),
  'letters in quotes': wrapped('"', '"'),
  'letters in curly quotes': wrapped('“', '”'),
  'letters in single quotes': wrapped('‘', '’'),
  'letters in capitals': ofLetters((all) => all.join(', ').toUpperCase()),
  'a dash within split letters': split('–'),
  'C within split letters': split('C'),
  'the word consonant within split letters': split('-consonant-'),
  'slashes between words': ofWords((all) => all.join('/')),
  'semicolons between words': ofWords((all) => all.join('; ')),
  'blanks between words': ofWords((all) => all.join(' ')),
  'and before the last word': ofWords(lastBy(' and ')),
  'words in quotes': ofWords((all) => all.map((one) => `"${one}"`).join(', ')),
  'words in capitals': ofWords((all) => all.join(', ').toUpperCase()),
  'examples behind a dash': ofExamples((words) => ` - ${words}`),
  'examples behind a colon': ofExamples((words) => `: ${words}`),
  'examples behind "as in"': ofExamples((words) => ` as in ${words}`),
  'examples behind "e.g."': ofExamples((words) => ` (e.g., ${words})`),
  'examples in square brackets': ofExamples((words) => ` [${words}]`),
};
