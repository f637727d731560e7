import type { Standing, WordEntry } from '../../analyze/types.ts';
import { say, type TextId } from '../../wording/say.ts';

const STANDINGS = [
  ['beyond', 'report.beyond', true],
  ['unsure', 'report.unsure', true],
  ['fresh', 'report.fresh', true],
  ['reads', 'report.reads', false],
  ['by-sight', 'report.knownBySight', false],
  ['name', 'report.namesNotCounted', false],
  ['skipped', 'report.leftOutForGroup', false],
] as const satisfies readonly (readonly [standing: Standing, text: TextId, isOpen: boolean])[];

/** Lists all words of the text by their standing for the group, frequent words first. */
export function StandingList({ words }: { words: readonly WordEntry[] }) {
  return (
    <>
      {STANDINGS.map(([standing, text, isOpen]) => {
        const found = words.filter((word) => word.standing === standing);
        if (found.length === 0) return null;
        return (
          <details key={standing} open={isOpen} class="report-standing">
            <summary>
              <h3>{say(text)}</h3> <span class="quiet">{describeCount(found)}</span>
            </summary>
            <p class="report-words" lang="en">
              {found.map(({ word, count }, i) => (
                <>
                  {i > 0 && ', '}
                  <span class={`swatch-${standing}`}>{word}</span>
                  {count > 1 && ` ×${count}`}
                </>
              ))}
            </p>
          </details>
        );
      })}
    </>
  );
}

function describeCount(words: readonly WordEntry[]): string {
  const places = words.reduce((sum, { count }) => sum + count, 0);
  return `${say('report.wordCount', { count: words.length })}, ${say('report.placeCount', { count: places })}`;
}
