import type { Analyzer } from '../../analyze/index.ts';
import type { Passage, PassageVersion, StoryWord } from '../kept/passage.ts';
import { type PassageLine, readLine } from '../passage-lines.ts';
import type { ShadedLine } from '../shade-line.ts';
import { sourceLine } from '../source-line.ts';
import { cleanText } from './clean-text.ts';
import { markPrintWord } from './mark-print-word.ts';
import type { SheetChoices } from './sheet-choices.ts';

/** A run of letters that are printed alike. */
export interface SheetRun {
  readonly text: string;
  /** Whether the letters practise the pattern of this step and are to be underlined. */
  readonly fresh: boolean;
}

export interface SheetLine extends Pick<PassageLine, 'kind' | 'level'> {
  readonly runs: readonly SheetRun[];
}

/** The content of a sheet, independent of its file format. Every text is a single line that can be printed. */
export interface Sheet {
  readonly title: string;
  readonly storyWords: readonly StoryWord[];
  readonly lines: readonly SheetLine[];
  readonly source: string | null;
  readonly nameLine: boolean;
}

/** The functions that shade and analyze words, available once the word table is loaded. */
export interface SheetWords {
  readonly shade: (line: string) => ShadedLine;
  readonly engine: Pick<Analyzer, 'analyze'>;
}

type Content = Pick<SheetChoices, 'dots' | 'vowels' | 'fresh' | 'storyWords' | 'nameLine'>;

/** The choices for a sheet without marks, used if nobody chose anything else. */
export const plainContent: Content = {
  dots: false,
  vowels: false,
  fresh: false,
  storyWords: true,
  nameLine: false,
};

/** Makes the sheet of a passage for one group. Without `words`, no word is marked. */
export function makeSheet(
  passage: Passage,
  version: PassageVersion,
  choices: Content,
  words: SheetWords | null,
): Sheet {
  const title = cleanText(passage.title).trim();
  const written = version.text.split('\n').filter((line) => cleanText(readLine(line).text).trim() !== '');
  // The text of a page begins with the page's own heading. The sheet already has this heading as its title.
  const { kind, text } = readLine(written[0] ?? '');
  if (kind === 'heading' && cleanText(text).trim().toLowerCase() === title.toLowerCase()) written.shift();
  const lines = rankHeadings(written.map((line) => makeLine(line, choices, words)));
  const source = sourceLine(passage);
  return {
    title,
    storyWords: choices.storyWords
      ? version.storyWords.map(({ word, meaning }) => ({
          word: cleanText(word),
          meaning: cleanText(meaning).trim(),
        }))
      : [],
    lines,
    source: source && cleanText(source),
    nameLine: choices.nameLine,
  };
}

/** Returns the letters of all runs as one text. */
export function textOfRuns(runs: readonly SheetRun[]): string {
  return runs.map(({ text }) => text).join('');
}

/** Renumbers the heading levels from 1 without gaps, as outlines require: `##` and `###` alone become 1 and 2. */
function rankHeadings(lines: readonly SheetLine[]): SheetLine[] {
  const levels = new Set(lines.flatMap(({ kind, level }) => (kind === 'heading' ? level : [])));
  const ranked = [...levels].sort();
  return lines.map((line) =>
    line.kind === 'heading' ? { ...line, level: ranked.indexOf(line.level) + 1 } : line,
  );
}

function makeLine(line: string, choices: Content, words: SheetWords | null): SheetLine {
  const { kind, level, sign } = readLine(line);
  const runs: { text: string; fresh: boolean }[] = [];
  const add = (piece: string, fresh: boolean): void => {
    const text = cleanText(piece);
    const last = runs.at(-1);
    if (last?.fresh === fresh) last.text += text;
    else if (text !== '') runs.push({ text, fresh });
  };
  let at = sign;
  const marks = choices.dots || choices.vowels || choices.fresh;
  for (const { start, end, key, standing } of words && marks ? words.shade(line).words : []) {
    add(line.slice(at, start), false);
    const shown = line.slice(start, end);
    const { readings } = words!.engine.analyze(key);
    add(markPrintWord(shown, readings, choices), choices.fresh && standing === 'fresh');
    at = end;
  }
  add(line.slice(at), false);
  return { kind, level, runs };
}
