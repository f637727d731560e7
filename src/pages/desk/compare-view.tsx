import { diffWordsWithSpace } from 'diff';
import { useMemo } from 'preact/hooks';
import { say } from '../../wording/say.ts';
import type { VersionFigures } from './use-versions.ts';

type Version = Pick<VersionFigures, 'name' | 'text' | 'words' | 'practice'>;

/** Shows two texts side by side, with the words removed from the first and the words added in the second. */
export function CompareView({ from, to }: { from: Version; to: Version }) {
  const parts = useMemo(() => diffWordsWithSpace(from.text, to.text), [from.text, to.text]);
  return (
    <div class="compare">
      <section aria-label={from.name}>
        <h3>{from.name}</h3>
        <p class="quiet">{sayFigures(from)}</p>
        <p class="compared" lang="en" dir="ltr">
          {parts.map(
            ({ value, added, removed }, i) => !added && (removed ? <del key={i}>{value}</del> : value),
          )}
        </p>
      </section>
      <section aria-label={to.name}>
        <h3>{to.name}</h3>
        <p class="quiet">{sayFigures(to)}</p>
        <p class="compared" lang="en" dir="ltr">
          {parts.map(
            ({ value, added, removed }, i) => !removed && (added ? <ins key={i}>{value}</ins> : value),
          )}
        </p>
      </section>
    </div>
  );
}

function sayFigures({ words, practice }: Version): string {
  return say('desk.figures', { count: words, practised: practice.words });
}
