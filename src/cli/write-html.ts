import type { ReportWriter } from './report-writer.ts';
import type { GroupReport, VettedGroup } from './text-record.ts';

const GAPS_SHOWN = 5;

/** Writes a self-contained page to print or share, light or dark as its reader prefers. The page loads and runs nothing. */
export function createHtmlWriter(groups: readonly VettedGroup[]): ReportWriter {
  return {
    head: () => `<!doctype html>
<html lang="en">
<meta charset="utf-8">
<meta name="viewport" content="width=device-width">
<meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
<title>Texts for ${escapeText(groups.map(({ group }) => group.name).join(', '))}</title>
<style>${style}</style>
<h1>Texts by group</h1>
<ul>
${groups.map((group) => `<li>${sayGroup(group)}`).join('\n')}
</ul>
<table>
<thead><tr>${columns.map((title) => `<th scope="col">${title}`).join('')}</thead>
`,
    row: (record) =>
      'error' in record
        ? `<tbody><tr><th scope="rowgroup">${escapeText(record.text)}<td colspan="${columns.length - 1}" class="error">${escapeText(record.error)}</tbody>\n`
        : `<tbody>${record.reports.map((report, n) => `<tr>${n === 0 ? nameOf(record, record.reports.length) : ''}${cellsOf(report)}`).join('\n')}</tbody>\n`,
    between: '',
    foot: () => `</table>
<p>Readable is the share of words the group can read. Names and numbers are not counted. E. A. Betts, Foundations of Reading
Instruction (1946): 95 percent of words known for reading with help, 99 percent for reading alone. Wordreach estimates which words
can be decoded. The teacher and the sequence in use decide.</p>
</html>
`,
  };
}

const columns = [
  'Text',
  'Group',
  'Readable',
  'Words',
  'Names',
  'Unsure',
  'Not yet decodable',
  '95% at step',
  '99% at step',
  'Missing patterns, and how many more words are readable if each is taught',
];

function sayGroup({ group, sequence }: VettedGroup): string {
  const title = sequence?.steps[group.step - 1]?.title;
  const place = sequence === null ? '' : `: ${sequence.name}, step ${group.step}${title ? `, ${title}` : ''}`;
  return `<b>${escapeText(group.name)}</b>${escapeText(place)}`;
}

function nameOf({ text, title }: { readonly text: string; readonly title: string }, rows: number): string {
  return `<th scope="rowgroup" rowspan="${rows}">${escapeText(title)}<small>${escapeText(text)}</small>`;
}

function cellsOf({ group, tally, reaches95, reaches99, gaps }: GroupReport): string {
  const { reach, running, names, unsure, beyond } = tally;
  const opening = gaps.filter(({ opens }) => opens > 0).slice(0, GAPS_SHOWN);
  const numbers = [running + names, names, unsure, beyond, reaches95 ?? '–', reaches99 ?? '–'];
  return [
    `<td>${escapeText(group)}`,
    reach === null
      ? '<td class="reach">–'
      : `<td class="reach"><span>${reach.toFixed(1)}%</span><i style="width:${reach / 25}em"></i>`,
    ...numbers.map((number) => `<td class="number">${number}`),
    `<td>${opening.map(({ label, opens }) => `${escapeText(label)} <b>${opens}</b>`).join('; ')}`,
  ].join('');
}

export function escapeText(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);
}

const style = `
:root { color-scheme: light dark; --paper: #fbf7ef; --ink: #26241f; --soft: #6a655a; --line: #ddd5c4; --sea: #1c6b62; --clay: #9a4a26 }
@media (prefers-color-scheme: dark) {
  :root { --paper: #1f1e1b; --ink: #ece6d9; --soft: #aaa393; --line: #3d3a33; --sea: #6fc0b3; --clay: #e09a74 }
}
body { margin: 2rem auto; max-width: 75rem; padding: 0 1rem; background: var(--paper); color: var(--ink); font: 16px/1.45 Georgia, serif }
h1 { font-weight: normal; font-size: 1.6rem }
ul { list-style: none; padding: 0 }
table { border-collapse: collapse; width: 100%; font-size: .9rem }
th, td { padding: .35rem .6rem; text-align: start; vertical-align: top; border-block-end: 1px solid var(--line) }
thead th { color: var(--sea); font-weight: normal; vertical-align: bottom }
tbody th { font-weight: bold; overflow-wrap: anywhere; min-width: 9rem }
small { display: block; color: var(--soft); font-weight: normal }
.number { text-align: end; font-variant-numeric: tabular-nums }
.reach { white-space: nowrap; font-variant-numeric: tabular-nums; min-width: 5em }
.reach i { display: block; height: 3px; background: var(--sea); print-color-adjust: exact }
.error { color: var(--clay) }
td:last-child:not(.error) { min-width: 18rem }
tbody { break-inside: avoid }
@media (max-width: 50rem) { table { display: block; overflow-x: auto } }
@media print { :root { --paper: #fff; --ink: #000; --soft: #444; --line: #bbb; --sea: #14534c } body { margin: 0; max-width: none } }
`;
