import { say, type TextId } from '../wording/say.ts';

const MARKS = [
  ['soon', 'ui.markSoon'],
  ['beyond', 'ui.markLater'],
  ['fresh', 'ui.markFresh'],
  ['unsure', 'ui.markUnsure'],
  ['plain', 'ui.markNone'],
] as const satisfies readonly (readonly [string, TextId])[];

/** The meaning of each mark of a page, beside a word that has it. */
export function MarkLegend() {
  return (
    <dl class="mark-legend">
      {MARKS.map(([mark, text]) => (
        <div key={mark}>
          <dt lang="en">
            <span class={`swatch-${mark}`}>{say('ui.markSample')}</span>
          </dt>
          <dd>{say(text)}</dd>
        </div>
      ))}
    </dl>
  );
}

/** The same legend, folded until the reader opens it. */
export function FoldedLegend() {
  return (
    <details class="legend-fold">
      <summary>{say('ui.marksTitle')}</summary>
      <MarkLegend />
    </details>
  );
}
