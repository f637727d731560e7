import {
  AlignmentType,
  BorderStyle,
  Document,
  Footer,
  HeadingLevel,
  Packer,
  Paragraph,
  Table,
  TableCell,
  TableRow,
  TextRun,
  WidthType,
} from 'docx';
import { FONTS, GAPS, type SheetChoices } from '../../../passage/print/sheet-choices.ts';
import type { LessonPaperProps } from './lesson-paper.tsx';
import { hasCells, type PrintedBlock } from './printed-part.ts';

/** One millimetre in twentieths of a point, the unit of these documents. */
const MM = 1440 / 25.4;
const PAPERS = { a4: [210 * MM, 297 * MM], letter: [12_240, 15_840] } as const;
const MARGIN = Math.round(18 * MM);
const NONE = { style: BorderStyle.NONE, size: 0, color: 'auto' };
const HAIR = { style: BorderStyle.SINGLE, size: 4, color: 'BBBBBB' };
const LINE = { style: BorderStyle.SINGLE, size: 6, color: '555555' };
const WORDS_BESIDE = 4;
const CARDS_BESIDE: Readonly<Record<string, number>> = { 'cards-6': 2, 'cards-12': 3 };

/** Writes a lesson as a document for word processors. Tables are kept as tables, so that rows can be added. */
export function writeLessonDocx(
  { title, nameLine, parts, source }: LessonPaperProps,
  { paper, size, font, gaps }: SheetChoices,
): Promise<Blob> {
  const [width, height] = PAPERS[paper];
  const heading = (points: number) => ({
    run: { bold: true, size: points * 2, color: '000000', font: FONTS[font].word },
    paragraph: { keepNext: true, spacing: { before: 200, after: 80 } },
  });
  const document = new Document({
    title,
    styles: {
      default: {
        document: {
          run: {
            font: FONTS[font].word,
            size: size * 2,
            characterSpacing: Math.round(GAPS[gaps].letters * size * 20),
          },
        },
        title: heading(17),
        heading1: heading(13),
        heading2: heading(10),
      },
    },
    sections: [
      {
        properties: {
          page: {
            size: { width: Math.round(width), height: Math.round(height) },
            margin: { top: MARGIN, bottom: MARGIN, left: MARGIN, right: MARGIN },
          },
        },
        ...(source && { footers: { default: new Footer({ children: [small(source)] }) } }),
        children: [
          ...(title ? [new Paragraph({ heading: HeadingLevel.TITLE, children: [new TextRun(title)] })] : []),
          ...(nameLine ? [new Paragraph('Name ____________________________   Date ______________')] : []),
          ...parts.flatMap(({ title, blocks }) => [
            new Paragraph({ heading: HeadingLevel.HEADING_1, children: [new TextRun(title)] }),
            ...blocks.flatMap(writeBlock),
          ]),
        ],
      },
    ],
  });
  return Packer.toBlob(document);
}

function writeBlock({ title, layout, note, numbered, columns, rows }: PrintedBlock): (Paragraph | Table)[] {
  const { blank, forTeacher } = columns[0]!;
  const heads = columns.map(({ head }) => head);
  const number = (i: number): string => (numbered ? `${i + 1}  ` : '');
  const body = (): Paragraph | Table => {
    if (hasCells(layout)) {
      const cells = rows.map((row, n) =>
        row.map((text, i) => ({
          text: i === 0 ? number(n) + text : text,
          blank: columns[i]!.blank,
          small: columns[i]!.forTeacher,
        })),
      );
      return table(heads.some((head) => head !== '') ? heads : null, cells);
    }
    if (layout === 'words' || layout.startsWith('cards')) {
      const cells = rows.map(([text = ''], i) => ({ text: number(i) + text, blank, small: forTeacher }));
      return table(null, chunk(cells, CARDS_BESIDE[layout] ?? WORDS_BESIDE));
    }
    const text = (row: readonly string[]): string => (layout === 'chain' ? row.join(' → ') : (row[0] ?? ''));
    return table(
      null,
      rows.map((row, i) => [{ text: number(i) + text(row), blank, small: forTeacher }]),
    );
  };
  return [
    ...(title ? [new Paragraph({ heading: HeadingLevel.HEADING_2, children: [new TextRun(title)] })] : []),
    ...(note ? [small(note)] : []),
    body(),
  ];
}

interface Cell {
  readonly text: string;
  readonly blank: boolean;
  readonly small: boolean;
}

function table(heads: readonly string[] | null, rows: readonly (readonly Cell[])[]): Table {
  const columns = Math.max(1, ...rows.map((row) => row.length));
  const bottom = (cell: Cell | undefined) => (cell?.blank ? LINE : HAIR);
  return new Table({
    width: { size: 100, type: WidthType.PERCENTAGE },
    borders: {
      top: NONE,
      bottom: NONE,
      left: NONE,
      right: NONE,
      insideHorizontal: HAIR,
      insideVertical: NONE,
    },
    rows: [
      ...(heads
        ? [
            new TableRow({
              tableHeader: true,
              children: heads.map((head) => new TableCell({ children: [small(head)] })),
            }),
          ]
        : []),
      ...rows.map(
        (row) =>
          new TableRow({
            cantSplit: true,
            children: Array.from({ length: columns }, (_, i) => {
              const cell = row[i];
              const run = new TextRun({
                text: cell?.text ?? '',
                ...(cell?.small && { size: 22, color: '333333' }),
              });
              return new TableCell({
                borders: { bottom: bottom(cell) },
                children: [new Paragraph({ spacing: { before: 60, after: 60 }, children: [run] })],
              });
            }),
          }),
      ),
    ],
  });
}

function small(text: string): Paragraph {
  return new Paragraph({
    alignment: AlignmentType.LEFT,
    spacing: { after: 60 },
    children: [new TextRun({ text, size: 20, color: '333333', characterSpacing: 0 })],
  });
}

function chunk<T>(items: readonly T[], size: number): T[][] {
  return Array.from({ length: Math.ceil(items.length / size) }, (_, i) =>
    items.slice(i * size, (i + 1) * size),
  );
}
