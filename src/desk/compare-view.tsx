import { diffWordsWithSpace } from 'diff';
import { useMemo } from 'preact/hooks';

/** The text as found and as adapted, side by side, with what was taken out and what was put in. */
export function CompareView({ original, text }: { original: string; text: string }) {
  const parts = useMemo(() => diffWordsWithSpace(original, text), [original, text]);
  return (
    <div class="compare">
      <section aria-label="As found">
        <h3>As found</h3>
        <p>
          {parts.map(
            ({ value, added, removed }, i) => !added && (removed ? <del key={i}>{value}</del> : value),
          )}
        </p>
      </section>
      <section aria-label="Adapted">
        <h3>Adapted</h3>
        <p>
          {parts.map(
            ({ value, added, removed }, i) => !removed && (added ? <ins key={i}>{value}</ins> : value),
          )}
        </p>
      </section>
    </div>
  );
}
