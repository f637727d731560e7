import { writeFileSync } from 'node:fs';
import { startPlainBrowser } from './e2e/browser.ts';
import { printedLayouts } from './e2e/pdf-prints.ts';
const browser = await startPlainBrowser();
const page = await browser.newPage();
for (const layout of printedLayouts) writeFileSync(`/tmp/27a-${layout.name.replace(/\W+/g, '-')}.pdf`, await layout.print(page));
await browser.close();
