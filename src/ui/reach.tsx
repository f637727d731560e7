import type { Tally } from '../analyze/types.ts';
import './reach.css';

/** How much of the page the group can read: the figure, the bar, and the count of each standing. */
export function Reach({ tally }: { tally: Tally }) {
  const { running, reach } = tally;
  const rows = [
    { key: 'reads', label: 'decodable', count: tally.reads },
    { key: 'fresh', label: 'decodable, practises this step', count: tally.fresh },
    { key: 'by-sight', label: 'by sight', count: tally.bySight },
    { key: 'unsure', label: 'unsure', count: tally.unsure },
    { key: 'beyond', label: 'not yet decodable', count: tally.beyond },
  ].filter(({ count }) => count > 0);
  return (
    <section class="reach" aria-labelledby="reach-title">
      <h2 id="reach-title">
        Reach <span class="reach-figure">{reach.toFixed(reach === 100 ? 0 : 1)}%</span>
      </h2>
      <p class="quiet" role="status">
        The group can read {tally.reads + tally.fresh + tally.bySight} of {running} running words.
      </p>
      <div class="bar" aria-hidden="true">
        {rows.map(({ key, count }) => (
          <span key={key} class={`grows bar-${key}`} style={{ flexGrow: count }} />
        ))}
      </div>
      <ul class="legend">
        {rows.map(({ key, label, count }) => (
          <li key={key}>
            <span class={`dot bar-${key}`} aria-hidden="true" />
            <span>
              <span class={`swatch-${key}`}>{label}</span>
            </span>
            <span class="count">{count}</span>
          </li>
        ))}
      </ul>
      {tally.names + tally.skipped > 0 && <p class="quiet">{describeLeftOut(tally)}</p>}
    </section>
  );
}

function describeLeftOut({ names, skipped }: Tally): string {
  const parts = [
    names > 0 && `${names} ${names === 1 ? 'name' : 'names'}`,
    skipped > 0 && `${skipped} ${skipped === 1 ? 'number or the like' : 'numbers and the like'}`,
  ];
  return `Not counted: ${parts.filter(Boolean).join(', ')}.`;
}
