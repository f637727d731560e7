import { READING_LEVELS } from '../analyze/index.ts';
import type { Tally } from '../analyze/types.ts';
import './mark-legend.css';
import './reach.css';
import { say, sayWith } from '../wording/say.ts';

interface ReachProps {
  readonly tally: Tally;
  /** The number of `beyond` words that become readable within the next steps, if the page marks such words. */
  readonly soon?: number;
  /** Whether the figure and the bar are left out. */
  readonly withheld?: boolean | undefined;
}

/** The share of the page that the group can read: the figure, the bar, and the count of each standing. */
export function Reach({ tally, soon = 0, withheld = false }: ReachProps) {
  const { running, reach } = tally;
  const rows = [
    { key: 'reads', label: say('ui.reads'), means: say('terms.decodableMeans'), count: tally.reads },
    { key: 'fresh', label: say('ui.fresh'), means: say('ui.markFresh'), count: tally.fresh },
    { key: 'by-sight', label: say('ui.bySight'), means: say('terms.bySightMeans'), count: tally.bySight },
    { key: 'unsure', label: say('ui.unsure'), means: say('terms.unsureMeans'), count: tally.unsure },
    { key: 'soon', label: say('ui.soon'), means: say('ui.markSoon'), count: soon },
    {
      key: 'beyond',
      label: say(soon > 0 ? 'ui.later' : 'ui.beyond'),
      means: say(soon > 0 ? 'ui.markLater' : 'terms.notYetMeans'),
      count: tally.beyond - soon,
    },
  ].filter(({ count }) => count > 0);
  return (
    <section class="reach" aria-labelledby="reach-title">
      <h2 id="reach-title">
        {withheld
          ? say('ui.reach')
          : sayWith('ui.percentReadable', {
              percent: <span class="reach-figure">{reach.toFixed(reach === 100 ? 0 : 1)}%</span>,
            })}
      </h2>
      <p class="quiet" role="status" title={say('ui.aboutMarks')}>
        {say('ui.canRead', {
          known: tally.reads + tally.fresh + tally.bySight,
          running,
          mark: READING_LEVELS.withHelp,
        })}
      </p>
      {!withheld && (
        <div class="bar" aria-hidden="true">
          {rows.map(({ key, count }) => (
            <span key={key} class={`grows bar-${key}`} style={{ flexGrow: count }} />
          ))}
        </div>
      )}
      <ul class="legend">
        {rows.map(({ key, label, means, count }) => (
          <li key={key} title={means}>
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
    names > 0 && say('ui.names', { count: names }),
    skipped > 0 && say('ui.skipped', { count: skipped }),
  ];
  return say('ui.notCounted', { what: parts.filter(Boolean).join(', ') });
}
