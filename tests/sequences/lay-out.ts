/** The content of a step of a sequence, independent of its layout. */
export interface PlannedStep {
  /** The subject of the step, in the usual terms of teachers: "Short a". */
  readonly focus: string;
  readonly letters: string;
  readonly examples: string;
  /** Empty if a step has no by-sight words. */
  readonly words: string;
}

/** Writes steps in the style of one kind of document. Each section has a few steps. */
export type LayOut = (sections: readonly (readonly PlannedStep[])[]) => string;

const numbered =
  (write: (step: PlannedStep, number: number) => string, between = '\n'): LayOut =>
  (sections) =>
    sections
      .flat()
      .map((step, i) => write(step, i + 1))
      .join(between);

const inSections =
  (
    head: (section: number) => string,
    write: (step: PlannedStep, number: number, inSection: number, section: number) => string,
  ): LayOut =>
  (sections) => {
    let number = 0;
    return sections
      .map((steps, section) =>
        [head(section + 1), ...steps.map((step, i) => write(step, ++number, i + 1, section + 1))].join('\n'),
      )
      .join('\n\n');
  };

const table =
  (
    divider: string,
    head: readonly string[],
    row: (step: PlannedStep, number: number, inSection: number, section: number) => string[],
  ): LayOut =>
  (sections) => {
    let number = 0;
    const rows = sections.flatMap((steps, section) =>
      steps.map((step, i) => row(step, ++number, i + 1, section + 1)),
    );
    return [...(head.length > 0 ? [head] : []), ...rows].map((cells) => cells.join(divider)).join('\n');
  };

const words = ({ words: list }: PlannedStep, before: string) => (list === '' ? '' : `${before}${list}`);
const roman = ['I', 'II', 'III', 'IV', 'V', 'VI', 'VII', 'VIII'];
const quoted = (cells: readonly string[]) => cells.map((cell) => (cell.includes(',') ? `"${cell}"` : cell));
const padded = (cells: readonly string[], widths: readonly number[]) =>
  cells
    .map((cell, i) => cell.padEnd(widths[i]!))
    .join('')
    .trimEnd();

/** Kinds of documents that schools type, by name. Common practice, no source. */
export const layOuts: Readonly<Record<string, LayOut>> = {
  'weeks with a colon': numbered((s, n) => `Week ${n}: ${s.letters}${words(s, '; sight words: ')}`),
  'short weeks': numbered((s, n) => `Wk${n}: ${s.letters}`),
  'weeks with a dot': numbered((s, n) => `Wk. ${n} ${s.letters}`),
  'weeks with a sign': numbered((s, n) => `WEEK #${n} - ${s.letters}`),
  'lessons with a dash': numbered((s, n) => `Lesson ${n} – ${s.letters}`),
  'lessons with a hyphen': numbered((s, n) => `Lesson ${n} - ${s.letters}`),
  'steps with examples in brackets': numbered((s, n) => `Step ${n}: ${s.letters} (${s.examples})`),
  'numbers with a dot': numbered((s, n) => `${n}. ${s.letters}`),
  'numbers with a bracket': numbered((s, n) => `${n}) ${s.letters}`),
  'numbers in brackets': numbered((s, n) => `(${n}) ${s.letters}`),
  'numbers and dashes': numbered((s, n) => `${n} - ${s.letters}`),
  'numbers and colons': numbered((s, n) => `${n}: ${s.letters}`),
  'bare lines': numbered((s) => s.letters),
  'bullets without headings': numbered((s) => `• ${s.letters}`),
  'weeks above their letters': numbered((s, n) => `Week ${n}\n${s.letters}`),
  'weeks above their bullets': numbered(
    (s, n) => `Week ${n}\n• ${s.letters}${words(s, '\n• Sight words: ')}`,
  ),
  'weeks above their names': numbered(
    (s, n) => `Week ${n}\nFocus: ${s.letters}\nExamples: ${s.examples}${words(s, '\nSight words: ')}`,
    '\n\n',
  ),
  'weeks above numbers': numbered((s, n) => `Week ${n}\n1. ${s.letters}\n2. Review`),
  'weeks in Markdown': numbered(
    (s, n) => `### Week ${n}\n\n- ${s.letters}${words(s, '\n- Sight words: ')}\n`,
  ),
  'weeks in bold': numbered((s, n) => `**Week ${n}**\n${s.letters}\n`),
  'weeks of a date': numbered((s, n) => `Week of 9/${n}: ${s.letters}`),
  'weeks and dates': numbered((s, n) => `Week ${n} (9/${n} - 9/${n + 4}): ${s.letters}`),
  'codes of one level': inSections(
    (section) => `Unit ${section}`,
    (s, _, n, section) => `${section}.${n} ${s.letters}`,
  ),
  'codes under a grade': inSections(
    () => '',
    (s, _, n, section) => `${section}.${n} ${s.letters}`,
  ),
  'units and weeks that begin anew': inSections(
    (section) => `UNIT ${section}`,
    (s, _, n) => `Week ${n}: ${s.letters}`,
  ),
  'units and weeks that run on': inSections(
    (section) => `Unit ${section} (6 weeks)`,
    (s, n) => `Week ${n}: ${s.letters}`,
  ),
  'units and days': inSections(
    (section) => `Unit ${section}`,
    (s, _, n) => `Day ${n}: ${s.letters}`,
  ),
  'quarters and bullets': inSections(
    (section) => `Quarter ${section}`,
    (s, n) => `• Week ${n}: ${s.letters}`,
  ),
  'grades and numbers that run on': inSections(
    (section) => `Grade ${section}`,
    (s, n) => `${n}. ${s.letters}`,
  ),
  outline: inSections(
    (section) => `${roman[section - 1]}. Part`,
    (s, _, n) => `   ${'ABCDEFGHIJ'[n - 1]}. ${s.letters}`,
  ),
  'outline with units': inSections(
    (section) => `Unit ${section}`,
    (s, _, n) => `  ${'abcdefghij'[n - 1]}) ${s.letters}`,
  ),
  'units and numbers that begin anew': inSections(
    (section) => `Unit ${section}`,
    (s, _, n) => `${n}. ${s.letters}`,
  ),
  'letters of the alphabet': (sections) =>
    sections
      .flat()
      .slice(0, 18)
      .map((s, i) => `${'ABCDEFGHIJKLMNOPQR'[i]}. ${s.letters}`)
      .join('\n'),
  'numbers with tabs': numbered((s, n) => `${n}.\t${s.letters}`),
  'bullets with tabs': numbered((s, n) => `Week ${n}\n•\t${s.letters}`),
  'weeks with tabs': numbered((s, n) => `Week ${n}:\t${s.letters}`),
  'weeks under a title': (sections) => `Our phonics plan\n\n${layOuts['weeks with a colon']!(sections)}`,
  'weeks with teaching and review': numbered((s, n) => `Week ${n}: ${s.letters}\nReview: last week`),
  'weeks with marks of bold': numbered((s, n) => `**Week ${n}:** ${s.letters}`),
  'weeks in words': numbered((s, n) => `Week ${n}. Teach ${s.letters}.`),
  ticks: numbered((s) => `[ ] ${s.letters}`),
  'phases and sets': inSections(
    (section) => `PHASE ${section}`,
    (s, n) => `Set ${n}: ${s.letters}`,
  ),
  'shortened units and weeks': inSections(
    () => '',
    (s, _, n, section) => `U${section} W${n}: ${s.letters}`,
  ),
  'a table': table('\t', ['Week', 'Phonics', 'Examples', 'Sight words'], (s, n) => [
    `${n}`,
    s.letters,
    s.examples,
    s.words,
  ]),
  'a table with weeks named': table('\t', ['Week', 'New sounds', 'Words'], (s, n) => [
    `Week ${n}`,
    s.letters,
    s.examples,
  ]),
  'a table with a focus': table('\t', ['Wk', 'Focus', 'Spellings', 'Practice words', 'HFW'], (s, n) => [
    `${n}`,
    s.focus,
    s.letters,
    s.examples,
    s.words,
  ]),
  'a table with its words first': table('\t', ['High-frequency words', 'Skill', 'Lesson'], (s, n) => [
    s.words,
    s.letters,
    `${n}`,
  ]),
  'a table with dates': table('\t', ['Dates', 'Phonics skill', 'Notes'], (s, n) => [
    `9/${n}-9/${n + 4}`,
    s.letters,
    n % 2 ? 'small groups' : '',
  ]),
  'a table without names': table('\t', [], (s, n) => [`${n}`, s.letters, s.examples]),
  'a table with units': table('\t', ['Unit', 'Week', 'Phonics', 'Example words'], (s, n, first, section) => [
    first === 1 ? `Unit ${section}` : '',
    `${n}`,
    s.letters,
    s.examples,
  ]),
  'a table with units in each row': table('\t', ['Unit', 'Week', 'Phonics'], (s, _, n, section) => [
    `${section}`,
    `${n}`,
    s.letters,
  ]),
  'a table with grades': table('\t', ['Grade', 'Quarter', 'Skill'], (s, _, n, section) => [
    `${section}`,
    `Q${n}`,
    s.letters,
  ]),
  'a table with rows of units': (sections) => {
    let number = 0;
    const rows = sections.flatMap((steps, section) => [
      [`UNIT ${section + 1}`, '', ''],
      ...steps.map((s) => [`Week ${++number}`, s.letters, s.examples]),
    ]);
    return [['Week', 'Phonics', 'Words'], ...rows].map((cells) => cells.join('\t')).join('\n');
  },
  'a table with its names again': (sections) => {
    let number = 0;
    return sections
      .map((steps, section) =>
        [
          `Quarter ${section + 1}`,
          'Week\tPhonics\tWords',
          ...steps.map((s) => `${++number}\t${s.letters}\t${s.examples}`),
        ].join('\n'),
      )
      .join('\n\n');
  },
  'a table under titles': (sections) => `Grade 1 plan\t\t\nDraft\t\t\n${layOuts['a table']!(sections)}`,
  'a table with two rows a week': (sections) =>
    [
      'Week\tPhonics\tWords',
      ...sections.flat().flatMap((s, i) => [`${i + 1}\t${s.letters}\t${s.examples}`, '\treview\t']),
    ].join('\n'),
  'a table with lines in its cells': (sections) =>
    [
      'Week\tPhonics\tWords',
      ...sections.flat().map((s, i) => `${i + 1}\t"${s.letters.replaceAll(', ', '\n')}"\t"${s.examples}"`),
    ].join('\n'),
  'a table with semicolons': (sections) =>
    ['Week;Phonics;Words', ...sections.flat().map((s, i) => `${i + 1};${s.letters};${s.examples}`)].join(
      '\n',
    ),
  'a table of pieces that lie': (sections) =>
    sections
      .map((steps, section) =>
        [
          ['', ...steps.map((_, i) => `Week ${sections.slice(0, section).flat().length + i + 1}`)],
          ['Phonics', ...steps.map((s) => s.letters)],
          ['Examples', ...steps.map((s) => s.examples)],
        ]
          .map((cells) => cells.join('\t'))
          .join('\n'),
      )
      .join('\n'),
  'a table that lies': (sections) => {
    const steps = sections.flat();
    return [
      ['', ...steps.map((_, i) => `Week ${i + 1}`)],
      ['Phonics', ...steps.map((s) => s.letters)],
      ['Sight words', ...steps.map((s) => s.words)],
    ]
      .map((cells) => cells.join('\t'))
      .join('\n');
  },
  'a saved spreadsheet': (sections) =>
    [['Week', 'Phonics', 'Words'], ...sections.flat().map((s, i) => [`${i + 1}`, s.letters, s.examples])]
      .map((cells) => quoted(cells).join(','))
      .join('\n'),
  'a table in Markdown': (sections) =>
    [
      '| Week | Pattern | Words |',
      '|---|---|---|',
      ...sections.flat().map((s, i) => `| ${i + 1} | ${s.letters} | ${s.examples} |`),
    ].join('\n'),
  'bars without a head': table(' | ', [], (s, n) => [`Week ${n}`, s.letters]),
  'wide gaps': (sections) =>
    [
      ['Week', 'Sounds', 'Words to read'],
      ...sections.flat().map((s, i) => [`${i + 1}`, s.letters, s.examples]),
    ]
      .map((cells) => padded(cells, [8, 34, 30]))
      .join('\n'),
  'one cell a line': (sections) =>
    [
      'Week',
      'Phonics',
      'Words',
      ...sections.flat().flatMap((s, i) => [`${i + 1}`, s.letters, s.examples]),
    ].join('\n'),
};
