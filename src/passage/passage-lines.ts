/** One line of a passage's text. */
export interface PassageLine {
  readonly kind: 'heading' | 'item' | 'paragraph';
  /** 1 to 3 for headings. */
  readonly level: number;
  /** The words, without the sign that says the kind. */
  readonly text: string;
  /** How long that sign is. */
  readonly sign: number;
}

/** Reads one line: `# The storm` is a heading, `- nets` an entry of a list, anything else a paragraph. */
export function readLine(line: string): PassageLine {
  const sign = /^(?:(#{1,3})|[-•*]) +(?=\S)/.exec(line);
  if (!sign) return { kind: 'paragraph', level: 0, text: line, sign: 0 };
  const level = sign[1]?.length ?? 0;
  const { length } = sign[0];
  return { kind: level > 0 ? 'heading' : 'item', level, text: line.slice(length), sign: length };
}

/** The lines of a passage's text that have words. */
export function readLines(text: string): PassageLine[] {
  return text
    .split('\n')
    .map(readLine)
    .filter((line) => line.text.trim() !== '');
}

/** The text of a passage made of lines; a paragraph that would read as something else is kept one. */
export function writeLines(lines: readonly Pick<PassageLine, 'kind' | 'level' | 'text'>[]): string {
  return lines
    .map(({ kind, level, text }) => {
      if (kind === 'heading') return `${'#'.repeat(Math.min(Math.max(level, 1), 3))} ${text}`;
      return kind === 'item' ? `- ${text}` : text.replace(/^(#{1,3}|[-*]) +/, '');
    })
    .join('\n');
}
