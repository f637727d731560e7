import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { type Climb, READING_LEVELS } from '../analyze/index.ts';
import './climb-chart.css';
import { say } from '../wording/say.ts';
import type { ClimbLine } from './climb-line.ts';
import { ClimbReadout } from './climb-readout.tsx';
import { ClimbTable } from './climb-table.tsx';
import { describeClimb } from './describe-climb.ts';
import { placeLabels } from './place-labels.ts';

/** The number of line styles in the style sheet. */
const LOOKS = 8;

/**
 * Shows reach by step for one or more groups: a chart, the same content in sentences, and every figure in a table.
 * Lines differ by dashes and are labelled with the group's name, so no colour is needed. A dot shows the current step
 * of the group.
 */
export function ClimbChart({ lines }: { lines: readonly ClimbLine[] }) {
  const last = Math.max(1, ...lines.map(({ sequence }) => sequence.steps.length));
  const across = (step: number): number => (step / last) * 100;
  const here = lines.map(({ climb, step }) => ({ x: across(step), y: 100 - climb.reach[step]! }));
  const labels = placeLabels(here);
  const [pointed, setPointed] = useState<number | null>(null);
  const point = ({ currentTarget, clientX }: JSX.TargetedPointerEvent<HTMLElement>): void => {
    const { left, width } = currentTarget.getBoundingClientRect();
    const step = Math.round(((clientX - left) / width) * last);
    setPointed(Math.min(Math.max(step, 0), last));
  };
  return (
    <div class="climb">
      <figure class="climb-figure">
        <div
          class="climb-plot"
          role="img"
          aria-label={say('ui.climbLabel', { groups: lines.map(({ name }) => name).join(', ') })}
          onPointerMove={point}
          onPointerDown={point}
          onPointerLeave={() => setPointed(null)}
        >
          <svg class="climb-lines" viewBox="0 0 100 100" preserveAspectRatio="none" aria-hidden="true">
            {[0, 25, 50, 75].map((percent) => (
              <path key={percent} class="climb-grid" d={`M0 ${100 - percent}H100`} />
            ))}
            {Object.values(READING_LEVELS).map((mark) => (
              <path key={mark} class="climb-mark" d={`M0 ${100 - mark}H100`} />
            ))}
            {pointed !== null && <path class="climb-pointed" d={`M${across(pointed)} 0V100`} data-screen />}
            {here.map(({ x, y }, i) => (
              <path key={i} class="climb-drop" d={`M${x} ${y}V100`} />
            ))}
            {lines.map(({ climb }, i) => (
              <path key={i} class={`climb-line climb-line-${i % LOOKS}`} d={draw(climb, across)} />
            ))}
          </svg>
          <span class="climb-mark-name climb-mark-alone">
            {say('ui.readAlone', { mark: READING_LEVELS.alone })}
          </span>
          <span class="climb-mark-name climb-mark-help">
            {say('ui.readWithHelp', { mark: READING_LEVELS.withHelp })}
          </span>
          {[0, 50, 100].map((percent) => (
            <span key={percent} class="climb-percent" style={{ top: `${100 - percent}%` }}>
              {percent}%
            </span>
          ))}
          {ticks(last).map((step) => (
            <span key={step} class="climb-step" style={{ left: `${across(step)}%` }}>
              {step}
            </span>
          ))}
          {lines.map(({ name, climb, step }, i) => (
            <>
              <span
                class={`climb-dot climb-dot-${i % LOOKS}`}
                style={{ left: `${here[i]!.x}%`, top: `${here[i]!.y}%` }}
              />
              <span
                class={`climb-name climb-name-${labels[i]!.side}`}
                style={{
                  top: `${labels[i]!.top}%`,
                  [labels[i]!.side === 'left' ? 'right' : 'left']:
                    `${labels[i]!.side === 'left' ? 100 - here[i]!.x : here[i]!.x}%`,
                }}
              >
                <Sample look={i} /> {name} {climb.reach[step]!.toFixed(1)}%
              </span>
            </>
          ))}
        </div>
        <ClimbReadout lines={lines} step={pointed} />
        <figcaption class="quiet">{say('ui.climbCaption')}</figcaption>
      </figure>
      <ul class="climb-says">
        {lines.map(({ name, climb, sequence, step }, i) => (
          <li key={i}>
            <p>
              <Sample look={i} /> <strong>{name}</strong>{' '}
              <span class="quiet">{say('ui.inSequence', { sequence: sequence.name })}</span>
            </p>
            <p>{describeClimb(climb, sequence, step).join(' ')}</p>
          </li>
        ))}
      </ul>
      <details class="climb-details">
        <summary>{say('ui.climbTable')}</summary>
        <ClimbTable lines={lines} />
      </details>
    </div>
  );
}

/** A sample of a group's line, as in a legend. */
function Sample({ look }: { look: number }) {
  return (
    <svg class="climb-sample" viewBox="0 0 28 8" aria-hidden="true">
      <path class={`climb-line climb-line-${look % LOOKS}`} d="M0 4H28" />
    </svg>
  );
}

function draw({ reach }: Climb, across: (step: number) => number): string {
  return reach.map((percent, step) => `${step === 0 ? 'M' : 'L'}${across(step)} ${100 - percent}`).join('');
}

/**
 * Returns the labelled steps: every fifth step, every tenth, and so on, as many as fit in a narrow chart, and the last
 * step, with room before it.
 */
function ticks(last: number): number[] {
  const apart = [1, 2, 5, 10, 20, 50, 100].find((size) => last / size <= 8) ?? last;
  const even = Array.from({ length: Math.floor(last / apart) + 1 }, (_, i) => i * apart);
  return [...even.filter((step) => last - step > apart * 0.6), last];
}
