import { groupItems } from './group-items.ts';
import type { Sheet, SheetLine } from './make-sheet.ts';
import { FONTS, GAPS, type SheetChoices } from './sheet-choices.ts';

/**
 * Writes a sheet as the body of a web page: title, story words, text and source. All content is written as text and
 * never as markup.
 */
export function writeHtmlBody({ title, storyWords, lines, source, nameLine }: Sheet): string {
  const box = storyWords.map(
    ({ word, meaning }) => `<dt>${escapeText(word)}</dt>${meaning ? `<dd>${escapeText(meaning)}</dd>` : ''}`,
  );
  return [
    title && `<h1>${escapeText(title)}</h1>`,
    nameLine && '<p class="name">Name <span></span> Date <span></span></p>',
    box.length > 0 && `<section class="box"><h2>Words to pre-teach</h2><dl>${box.join('')}</dl></section>`,
    ...groupItems(lines).map((line) =>
      Array.isArray(line)
        ? `<ul>${line.map((item) => `<li>${write(item)}</li>`).join('')}</ul>`
        : writeBlock(line),
    ),
    source && `<footer>${escapeText(source)}</footer>`,
  ]
    .filter(Boolean)
    .join('\n');
}

/**
 * Writes a sheet as a single file that needs no other file. The page has the chosen font, gaps, size, line spacing and
 * paper, and is made for reading on a screen or printing.
 */
export function writeHtml(sheet: Sheet, { font, gaps, size, lineSpacing, paper }: SheetChoices): string {
  const { letters, words } = GAPS[gaps];
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escapeText(sheet.title || 'Passage')}</title>
<style>
@page { size: ${paper === 'a4' ? 'A4' : 'letter'}; margin: 18mm 20mm; }
body { max-width: 34em; margin: 2em auto; padding: 0 1em; color: #000; background: #fff;
  font: ${size}pt/${lineSpacing} ${FONTS[font].css}; letter-spacing: ${letters}em; word-spacing: ${words}em;
  overflow-wrap: break-word; }
h1, h2, h3, h4 { line-height: 1.25; break-after: avoid; }
h1 { font-size: 1.4em; } h2 { font-size: 1.2em; } h3, h4 { font-size: 1em; }
p, li { orphans: 2; widows: 2; }
.name { display: flex; gap: 0.5em; font-size: 14pt; } .name span { flex: 3; border-bottom: 1px solid; }
.name span:last-child { flex: 1; }
.box { border: 1.5pt solid; padding: 0.5em 1em; break-inside: avoid; } .box h2 { margin: 0; font-size: 1em; }
dl { margin: 0; } dt { font-weight: bold; } dd { margin: 0 0 0 1em; }
footer { margin-top: 2em; font-size: 10pt; line-height: 1.4; letter-spacing: 0; word-spacing: 0; overflow-wrap: anywhere; }
@media print { body { max-width: none; margin: 0; padding: 0; } }
</style>
</head>
<body>
<main>
${writeHtmlBody(sheet)}
</main>
</body>
</html>
`;
}

function writeBlock(line: SheetLine): string {
  const tag = line.kind === 'heading' ? `h${line.level + 1}` : 'p';
  return `<${tag}>${write(line)}</${tag}>`;
}

function write({ runs }: SheetLine): string {
  return runs.map(({ text, fresh }) => (fresh ? `<u>${escapeText(text)}</u>` : escapeText(text))).join('');
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

function escapeText(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => ENTITIES[sign]!);
}
