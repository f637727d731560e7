import { spokenDirection, spokenLanguage } from '../../wording/say.ts';

/**
 * A report as a web page of its own, as it stands on the screen, without what can be pressed on it
 * (`data-screen`) and without scripts; it needs nothing else and tells nobody that it is read.
 */
export function writeReport(report: Element, title: string): string {
  const page = document.implementation.createHTMLDocument(title);
  page.documentElement.lang = spokenLanguage();
  page.documentElement.dir = spokenDirection();
  const charset = page.createElement('meta');
  charset.setAttribute('charset', 'utf-8');
  const viewport = page.createElement('meta');
  viewport.name = 'viewport';
  viewport.content = 'width=device-width, initial-scale=1';
  const style = page.createElement('style');
  style.textContent = [...document.styleSheets]
    .flatMap((sheet) => [...sheet.cssRules])
    .map(({ cssText }) => cssText)
    .join('\n');
  page.head.prepend(charset, viewport);
  page.head.append(style);
  const main = page.createElement('main');
  main.className = 'report-page';
  const copy = page.importNode(report, true);
  for (const control of copy.querySelectorAll('[data-screen]')) control.remove();
  main.append(copy);
  page.body.append(main);
  return `<!doctype html>\n${page.documentElement.outerHTML}\n`;
}
