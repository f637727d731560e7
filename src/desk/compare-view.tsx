import { diffWordsWithSpace } from 'diff';
import { useMemo } from 'preact/hooks';

interface Text {
  readonly name: string;
  readonly text: string;
}

/** Two texts side by side, with what was taken out and what was put in on the way from one to the other. */
export function CompareView({ from, to }: { from: Text; to: Text }) {
  const parts = useMemo(() => diffWordsWithSpace(from.text, to.text), [from.text, to.text]);
  return (
    <div class="compare">
      <section aria-label={from.name}>
        <h3>{from.name}</h3>
        <p>
          {parts.map(
            ({ value, added, removed }, i) => !added && (removed ? <del key={i}>{value}</del> : value),
          )}
        </p>
      </section>
      <section aria-label={to.name}>
        <h3>{to.name}</h3>
        <p>
          {parts.map(
            ({ value, added, removed }, i) => !removed && (added ? <ins key={i}>{value}</ins> : value),
          )}
        </p>
      </section>
    </div>
  );
}
