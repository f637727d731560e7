import type { Tally } from '../analyze/types.ts';

/** How much of the page the group can read: the figure, the bar, and the count of each standing. */
export function Reach({ tally }: { tally: Tally }) {
  const { running, reach } = tally;
  const rows = [
    { key: 'reads', label: 'decodable', count: tally.reads },
    { key: 'fresh', label: 'decodable, practises this step', count: tally.fresh },
    { key: 'by-sight', label: 'by sight', count: tally.bySight },
    { key: 'unsure', label: 'unsure', count: tally.unsure },
    { key: 'beyond', label: 'not yet decodable', count: tally.beyond },
  ];
  return (
    <section class="reach" aria-labelledby="reach-title">
      <h2 id="reach-title">
        Reach <span class="reach-figure">{reach.toFixed(reach === 100 ? 0 : 1)} %</span>
      </h2>
      <p class="quiet" role="status">
        The group can read {tally.reads + tally.fresh + tally.bySight} of {running} running words.
      </p>
      <div class="bar" aria-hidden="true">
        {rows.map(({ key, count }) => (
          <span
            key={key}
            class={`grows bar-${key}`}
            style={{ width: `${running === 0 ? 0 : (count / running) * 100}%` }}
          />
        ))}
      </div>
      <ul class="legend">
        {rows
          .filter(({ count }) => count > 0)
          .map(({ key, label, count }) => (
            <li key={key}>
              <span class={`swatch swatch-${key}`} aria-hidden="true">
                Aa
              </span>
              <span>{label}</span>
              <span class="count">{count}</span>
            </li>
          ))}
        {tally.names + tally.skipped > 0 && (
          <li class="quiet">
            <span class="swatch" aria-hidden="true" />
            <span>
              not counted: {tally.names} {tally.names === 1 ? 'name' : 'names'}, {tally.skipped} numbers and
              the like
            </span>
          </li>
        )}
      </ul>
    </section>
  );
}
