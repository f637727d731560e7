import { styleText } from 'node:util';

/** The formatting of a report for the place where it is printed. */
export interface Terminal {
  /** The number of characters in a line. */
  readonly width: number;
  bold(text: string): string;
  dim(text: string): string;
  /** The deep green of the extension's own controls, or the nearest colour that a terminal has. */
  accent(text: string): string;
}

/**
 * Opens the terminal. Text is unstyled if stdout is not a terminal, if NO_COLOR is set (no-color.org) or if TERM is
 * dumb. Lines have at most 80 characters.
 */
export function openTerminal(
  stdout: { readonly isTTY?: boolean; readonly columns?: number } = process.stdout,
  { NO_COLOR = '', TERM }: NodeJS.ProcessEnv = process.env,
): Terminal {
  const styled = stdout.isTTY === true && NO_COLOR === '' && TERM !== 'dumb';
  const style =
    (format: 'bold' | 'dim' | 'cyan') =>
    (text: string): string =>
      styled ? styleText(format, text, { validateStream: false }) : text;
  return {
    width: Math.min(80, stdout.columns || 80),
    bold: style('bold'),
    dim: style('dim'),
    accent: style('cyan'),
  };
}
