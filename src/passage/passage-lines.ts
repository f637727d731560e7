/** One line of a passage's text. */
export interface PassageLine {
  readonly kind: 'heading' | 'item' | 'paragraph';
  /** The heading level, from 1 to 3. */
  readonly level: number;
  /** The words of the line, without the sign for its kind. */
  readonly text: string;
  /** The length of the sign for the kind. */
  readonly sign: number;
}

/** Reads one line. `# The storm` is a heading, `- nets` is a list item, and any other line is a paragraph. */
export function readLine(line: string): PassageLine {
  const sign = /^(?:(#{1,3})|[-•*]) +(?=\S)/.exec(line);
  if (!sign) return { kind: 'paragraph', level: 0, text: line, sign: 0 };
  const level = sign[1]?.length ?? 0;
  const { length } = sign[0];
  return { kind: level > 0 ? 'heading' : 'item', level, text: line.slice(length), sign: length };
}

/** Returns the lines of a passage's text that have words. */
export function readLines(text: string): PassageLine[] {
  return text
    .split('\n')
    .map(readLine)
    .filter((line) => line.text.trim() !== '');
}

/**
 * Writes lines as the text of a passage. An opening sign that would turn a paragraph into another kind of line is
 * removed.
 */
export function writeLines(lines: readonly Pick<PassageLine, 'kind' | 'level' | 'text'>[]): string {
  return lines
    .map(({ kind, level, text }) => {
      if (kind === 'heading') return `${'#'.repeat(Math.min(Math.max(level, 1), 3))} ${text}`;
      return kind === 'item' ? `- ${text}` : text.replace(/^(#{1,3}|[-*]) +/, '');
    })
    .join('\n');
}
