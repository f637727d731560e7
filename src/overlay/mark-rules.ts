/** How marks look: a see-through wash and an underline, or the underline alone. */
export type Look = 'wash' | 'underline';

/** Names of the highlights: plain numbers, because the page can see them. */
export const MARKS = { beyond: 'wr-1', fresh: 'wr-2', unsure: 'wr-3', here: 'wr-4' } as const;

/**
 * Underlines are drawn in the text's own colour, tinted: whatever a page is coloured, its text stands out from its
 * ground, and so do they. The wash is so thin that text keeps its contrast. Style tells the marks apart where colour
 * cannot, and width where a printer or forced colours leave no other.
 */
const LINES = {
  beyond: `dotted 0.14em ${tinted('rgb(196 88 44)')}`,
  fresh: `solid 0.11em ${tinted('rgb(24 134 118)')}`,
  unsure: `dashed 0.08em ${tinted('rgb(128 128 128)')}`,
  here: `double 0.1em ${tinted('rgb(24 134 118)')}`,
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

function tinted(colour: string): string {
  return `color-mix(in srgb, currentColor 45%, ${colour})`;
}
