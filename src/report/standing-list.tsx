import type { Standing, WordEntry } from '../analyze/types.ts';

const STANDINGS: readonly (readonly [standing: Standing, says: string, isOpen: boolean])[] = [
  ['beyond', 'Not yet decodable', true],
  ['unsure', 'Unsure: look at them yourself', true],
  ['fresh', 'Decodable, and practise this step', true],
  ['reads', 'Decodable', false],
  ['by-sight', 'Known by sight', false],
  ['name', 'Names, not counted', false],
  ['skipped', 'Left out for this group', false],
];

/** Every word of the text by what it is to the group, the frequent first. */
export function StandingList({ words }: { words: readonly WordEntry[] }) {
  return (
    <>
      {STANDINGS.map(([standing, says, isOpen]) => {
        const found = words.filter((word) => word.standing === standing);
        if (found.length === 0) return null;
        return (
          <details key={standing} open={isOpen} class="report-standing">
            <summary>
              <h3>{says}</h3> <span class="quiet">{describeCount(found)}</span>
            </summary>
            <p class="report-words">
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
  return `${words.length} ${words.length === 1 ? 'word' : 'words'}, ${places} ${places === 1 ? 'place' : 'places'}`;
}
