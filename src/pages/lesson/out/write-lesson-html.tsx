import { render } from 'preact';
import type { SheetChoices } from '../../../passage/print/sheet-choices.ts';
import css from './lesson-paper.css?inline';
import { LessonPaper, type LessonPaperProps } from './lesson-paper.tsx';
import { paperStyle } from './lesson-print-view.tsx';
import type { sheetLanguage } from './printed-part.ts';

/** Returns the body of a lesson as markup. The page’s own renderer ensures that all text is treated as text. */
export function writeLessonBody(props: LessonPaperProps): string {
  const holder = document.createElement('div');
  render(<LessonPaper {...props} />, holder);
  const markup = holder.innerHTML;
  render(null, holder);
  return markup;
}

/** Writes a lesson as one self-contained file, to be read on a screen or printed. */
export function writeLessonHtml(
  props: LessonPaperProps,
  choices: SheetChoices,
  language: ReturnType<typeof sheetLanguage>,
): string {
  const page = document.implementation.createHTMLDocument(props.title || 'Lesson');
  page.documentElement.lang = language;
  const style = page.createElement('style');
  style.textContent = `${css}
@page { size: ${choices.paper === 'a4' ? 'A4' : 'letter'}; margin: 16mm 18mm; }
.paper { max-width: 46em; margin: 1em auto; padding: 0 1em; }
@media print { .paper { max-width: none; margin: 0; padding: 0; } }`;
  const charset = page.createElement('meta');
  charset.setAttribute('charset', 'utf-8');
  page.head.prepend(charset);
  page.head.append(style);
  page.body.className = 'paper';
  for (const [name, value] of Object.entries(paperStyle(choices))) page.body.style.setProperty(name, value);
  page.body.innerHTML = writeLessonBody(props);
  return `<!doctype html>\n${page.documentElement.outerHTML}\n`;
}
