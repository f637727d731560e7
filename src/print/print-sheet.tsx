import type { Sheet } from './make-sheet.ts';
import { SetText } from './set-text.tsx';
import { FONTS, GAPS, type SheetChoices } from './sheet-choices.ts';

/** A sheet of paper with a passage on it, as it will be printed. */
export function PrintSheet({ sheet, choices }: { sheet: Sheet; choices: SheetChoices }) {
  const { title, storyWords, lines, source, nameLine } = sheet;
  const { paper, font, gaps, size, lineSpacing, margin } = choices;
  const style = {
    '--sheet-font': FONTS[font].css,
    '--sheet-size': `${size}pt`,
    '--sheet-leading': lineSpacing,
    letterSpacing: `${GAPS[gaps].letters}em`,
    wordSpacing: `${GAPS[gaps].words}em`,
  };
  return (
    <article class={`sheet-paper sheet-${paper}`} style={style} lang="en">
      {title && <h1>{title}</h1>}
      {nameLine && (
        <p class="sheet-name">
          Name <span class="sheet-blank sheet-blank-long" /> Date <span class="sheet-blank" />
        </p>
      )}
      {storyWords.length > 0 && (
        <section class="sheet-box" aria-label="Story words">
          <p class="sheet-box-label">Story words</p>
          <dl>
            {storyWords.map(({ word, meaning }) => (
              <div key={word}>
                <dt>{word}</dt>
                {meaning && <dd>{meaning}</dd>}
              </div>
            ))}
          </dl>
        </section>
      )}
      <SetText key={JSON.stringify([lines, choices])} lines={lines} margin={margin} />
      {source && <footer class="sheet-source">{source}</footer>}
    </article>
  );
}
