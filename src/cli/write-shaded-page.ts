import { type Judge, tokenize } from '../analyze/index.ts';
import type { TextRecord, VettedGroup } from './text-record.ts';
import { createHtmlWriter, escapeText } from './write-html.ts';

/**
 * Returns a page for any browser: the report on one text for one group, and below it the text. Words that the group
 * cannot decode yet are marked, and so are words that are a guess or have two readings.
 */
export function writeShadedPage(record: TextRecord, text: string, group: VettedGroup, judge: Judge): string {
  const writer = createHtmlWriter([group]);
  const story = text.split('\n\n').map((block) => `<p>${shade(block, judge)}</p>`);
  return `${writer.head()}${writer.row(record)}${writer.foot().replace('</html>', '')}
<style>
mark { color: inherit; background: color-mix(in srgb, var(--clay) 18%, transparent); text-decoration: underline dotted 2px; text-underline-offset: .2em }
mark.unsure { background: none; text-decoration: underline dashed 1px }
article { max-width: 38rem; font-size: 1.15rem; line-height: 1.65 }
</style>
<article>
<h2>The text</h2>
<p><mark>Not yet decodable</mark>, <mark class="unsure">not sure</mark></p>
${story.join('\n')}
</article>
</html>
`;
}

function shade(text: string, judge: Judge): string {
  let html = '';
  let done = 0;
  for (const { start, end, kind, key } of tokenize(text)) {
    if (kind === 'skipped') continue;
    const { standing } = judge(key);
    if (standing !== 'beyond' && standing !== 'unsure') continue;
    const word = escapeText(text.slice(start, end));
    html += escapeText(text.slice(done, start));
    html += standing === 'beyond' ? `<mark>${word}</mark>` : `<mark class="unsure">${word}</mark>`;
    done = end;
  }
  return html + escapeText(text.slice(done));
}
