import {
  AlignmentType,
  BorderStyle,
  Document,
  Footer,
  HeadingLevel,
  type ISectionOptions,
  LevelFormat,
  LineNumberRestartFormat,
  LineRuleType,
  Packer,
  Paragraph,
  Table,
  TableCell,
  TableRow,
  TabStopType,
  TextRun,
  UnderlineType,
  WidthType,
} from 'docx';
import type { Sheet, SheetLine } from './make-sheet.ts';
import { FONTS, GAPS, type SheetChoices } from './sheet-choices.ts';

/** Lengths in twentieths of a point, the unit of documents. */
const MM = 1440 / 25.4;
const PAPERS = { a4: { width: 210 * MM, height: 297 * MM }, letter: { width: 12_240, height: 15_840 } };
const SIDE = 20 * MM;

/**
 * Writes a sheet as a document for word processors. Word processors count lines themselves, but cannot count the words
 * up to the end of each line, so `counts` is left out.
 */
export function writeDocx(sheet: Sheet, choices: SheetChoices): Promise<Blob> {
  const { size, font, gaps, lineSpacing, paper, margin } = choices;
  const page = PAPERS[paper];
  const inner = Math.round(page.width - 2 * SIDE);
  const section: ISectionOptions = {
    properties: {
      page: {
        size: { width: Math.round(page.width), height: Math.round(page.height) },
        margin: {
          top: Math.round(18 * MM),
          bottom: Math.round(18 * MM),
          left: Math.round(SIDE),
          right: Math.round(SIDE),
        },
      },
      ...(margin === 'numbers' && {
        lineNumbers: { countBy: 1, restart: LineNumberRestartFormat.CONTINUOUS },
      }),
    },
    ...(sheet.source && { footers: { default: writeFooter(sheet.source) } }),
    children: [
      ...(sheet.title
        ? [
            new Paragraph({
              heading: HeadingLevel.TITLE,
              suppressLineNumbers: true,
              children: [new TextRun(sheet.title)],
            }),
          ]
        : []),
      ...(sheet.nameLine ? [writeNameLine(inner)] : []),
      ...(sheet.storyWords.length > 0 ? writeBox(sheet, inner) : []),
      ...sheet.lines.map(writeLine),
    ],
  };
  const heading = (scale: number) => ({
    run: { bold: true, size: Math.round(size * 2 * scale), color: '000000', font: FONTS[font].word },
    paragraph: { keepNext: true, spacing: { before: size * 10, after: size * 6, ...lines(1.25) } },
  });
  const document = new Document({
    title: sheet.title,
    styles: {
      default: {
        document: {
          run: {
            font: FONTS[font].word,
            size: size * 2,
            characterSpacing: Math.round(GAPS[gaps].letters * size * 20),
          },
          paragraph: { spacing: { ...lines(lineSpacing / 1.2), after: size * 10 } },
        },
        title: heading(1.4),
        heading1: heading(1.2),
        heading2: heading(1.05),
        heading3: heading(1),
      },
    },
    numbering: {
      config: [
        {
          reference: 'list',
          levels: [
            {
              level: 0,
              format: LevelFormat.BULLET,
              text: '•',
              alignment: AlignmentType.LEFT,
              style: { paragraph: { indent: { left: size * 24, hanging: size * 16 } } },
            },
          ],
        },
      ],
    },
    sections: [section],
  });
  return Packer.toBlob(document);
}

/** Returns the spacing for a number of lines of the font. The height of a line is about 1.2 times the font size. */
function lines(count: number): { line: number; lineRule: typeof LineRuleType.AUTO } {
  return { line: Math.round(count * 240), lineRule: LineRuleType.AUTO };
}

const HEADINGS = [HeadingLevel.HEADING_1, HeadingLevel.HEADING_2, HeadingLevel.HEADING_3] as const;

function writeLine({ kind, level, runs }: SheetLine): Paragraph {
  return new Paragraph({
    ...(kind === 'heading' && { heading: HEADINGS[level - 1]!, suppressLineNumbers: true }),
    ...(kind === 'item' && { numbering: { reference: 'list', level: 0 } }),
    children: runs.map(
      ({ text, fresh }) => new TextRun({ text, ...(fresh && { underline: { type: UnderlineType.SINGLE } }) }),
    ),
  });
}

function writeNameLine(inner: number): Paragraph {
  return new Paragraph({
    suppressLineNumbers: true,
    tabStops: [
      { type: TabStopType.LEFT, position: Math.round(inner * 0.68), leader: 'underscore' },
      { type: TabStopType.LEFT, position: Math.round(inner * 0.7) },
      { type: TabStopType.RIGHT, position: inner, leader: 'underscore' },
    ],
    children: [new TextRun({ text: 'Name \t\tDate \t', size: 28, characterSpacing: 0 })],
  });
}

function writeBox({ storyWords }: Sheet, inner: number): (Table | Paragraph)[] {
  const border = { style: BorderStyle.SINGLE, size: 12, color: '000000' };
  const words = storyWords.map(
    ({ word, meaning }) =>
      new Paragraph({
        suppressLineNumbers: true,
        spacing: { after: 80, ...lines(1.25) },
        children: [
          new TextRun({ text: word, bold: true }),
          ...(meaning ? [new TextRun(`: ${meaning}`)] : []),
        ],
      }),
  );
  const label = new Paragraph({
    suppressLineNumbers: true,
    keepNext: true,
    spacing: { after: 80 },
    children: [new TextRun({ text: 'Words to pre-teach', size: 24 })],
  });
  const cell = new TableCell({
    borders: { top: border, bottom: border, left: border, right: border },
    margins: { top: 140, bottom: 100, left: 220, right: 220 },
    width: { size: inner, type: WidthType.DXA },
    children: [label, ...words],
  });
  return [
    new Table({
      width: { size: inner, type: WidthType.DXA },
      columnWidths: [inner],
      rows: [new TableRow({ cantSplit: true, children: [cell] })],
    }),
    new Paragraph({ suppressLineNumbers: true, spacing: { ...lines(1), after: 0 }, children: [] }),
  ];
}

function writeFooter(source: string): Footer {
  return new Footer({
    children: [
      new Paragraph({
        suppressLineNumbers: true,
        spacing: { ...lines(1), after: 0 },
        children: [new TextRun({ text: source, size: 20, characterSpacing: 0 })],
      }),
    ],
  });
}
