import { styleText } from 'node:util';

/** How a report may look where it is printed. */
export interface Terminal {
  /** Characters to a line. */
  readonly width: number;
  bold(text: string): string;
  dim(text: string): string;
  /** The deep green of the extension's own controls, or as near as a terminal has. */
  accent(text: string): string;
}

/**
 * Plain where stdout is not a terminal, where NO_COLOR is set (no-color.org) or TERM is dumb; at most 80
 * characters wide.
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
