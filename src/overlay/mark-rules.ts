/** How marks look: a see-through wash and an underline, or the underline alone. */
export type Look = 'wash' | 'underline';

/** Names of the highlights: plain numbers, because the page can see them. */
export const MARKS = { beyond: 'wr-1', fresh: 'wr-2', unsure: 'wr-3', here: 'wr-4' } as const;

/**
 * Underlines are drawn in the text's own colour: whatever a page is coloured, its text stands out from its ground, and so
 * do they. No tint is mixed in: Chromium 156 keeps a mix with one part's colour for others in the same font, which leaves
 * dark lines on dark parts. The wash is so thin that text keeps its contrast. Style tells the marks apart.
 */
const LINES = {
  beyond: 'dotted 0.12em currentColor',
  fresh: 'solid 0.07em currentColor',
  unsure: 'dashed 0.06em currentColor',
  here: 'double 0.08em currentColor',
} as const;
const WASHES: Partial<Record<keyof typeof LINES, string>> = {
  beyond: 'rgb(206 96 48 / 0.085)',
  here: 'rgb(30 150 132 / 0.24)',
};

/** The style sheet of all marks in one look. */
export function markRules(look: Look): string {
  const rules = Object.entries(LINES).map(([name, line]) => {
    const mark = name as keyof typeof LINES;
    const wash = look === 'wash' || mark === 'here' ? WASHES[mark] : undefined;
    const ground = wash ? `background-color: ${wash};` : '';
    return `::highlight(${MARKS[mark]}) { ${ground} text-decoration: underline ${line}; text-underline-offset: 0.2em; text-decoration-skip-ink: auto; }`;
  });
  return [...rules, FORCED].join('\n');
}

/**
 * With forced colours browsers paint every highlight alike, and its line in the colour of its text (Chromium 156): the line
 * has to stand inside the painted box to be seen.
 */
const FORCED = `@media (forced-colors: active) {
  ${Object.values(MARKS)
    .map((name) => `::highlight(${name})`)
    .join(', ')} { text-underline-offset: auto; }
}`;
