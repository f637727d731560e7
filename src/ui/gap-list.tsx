import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { Gap, PatternId } from '../analyze/types.ts';
import './gap-list.css';
import { say } from '../wording/say.ts';
import { patternName } from './pattern-name.ts';
import { useHeldRows } from './use-held-rows.ts';
import { WordButtons, type WordLinks } from './word-buttons.tsx';

const SHOWN = 6;

interface GapListProps {
  readonly gaps: readonly Gap[];
  readonly links: WordLinks;
  /** Called when a pattern is ticked as taught, or unticked while its row is still shown. */
  readonly onTaught: (pattern: PatternId, isTaught: boolean) => void;
}

/**
 * The patterns that this page needs and the group lacks, under their heading. The patterns that make the most words
 * readable come first.
 */
export function GapList(props: GapListProps) {
  return (
    <section class="gap-section" aria-labelledby="gaps-title">
      <h2 id="gaps-title">{say('ui.missingPatterns')}</h2>
      <GapRows {...props} />
    </section>
  );
}

interface GapRowsProps extends GapListProps {
  /** Returns the step that teaches a pattern, to show in its row, or null to show none. */
  readonly stepOf?: (pattern: PatternId) => number | null;
}

/**
 * The missing patterns in the given order. Each row has the pattern's words and a box to mark the pattern as taught. A
 * ticked row stays, in grey, until pointer and keyboard focus have left the list.
 */
export function GapRows({ gaps, links, onTaught, stepOf = () => null }: GapRowsProps) {
  const [all, setAll] = useState(false);
  const { rows, isGone, hold, leaving } = useHeldRows(gaps, ({ pattern }) => pattern);
  const shown = all ? rows : rows.slice(0, SHOWN);
  if (rows.length === 0) return null;
  return (
    <div class="gap-rows" {...leaving}>
      <ul class="gaps">
        {shown.map((gap) => {
          const isTaught = isGone(gap);
          return (
            <li key={gap.pattern} class={isTaught ? 'gap gap-taught' : 'gap'}>
              <div class="gap-head">
                <h3>{keepEndings(patternName(gap.pattern))}</h3>
                <label class="tick">
                  <input
                    type="checkbox"
                    checked={isTaught}
                    onChange={({ currentTarget: { checked } }) => {
                      hold();
                      onTaught(gap.pattern, checked);
                    }}
                  />{' '}
                  {say('ui.taught')}
                  <span class="unseen">: {patternName(gap.pattern)}</span>
                </label>
              </div>
              <p class="quiet gap-says">
                <span>{describeGap(gap, stepOf(gap.pattern))}</span>
                {isTaught && <span>{say('ui.isTaught')}</span>}
              </p>
              <WordButtons list={gap.pattern} words={gap.words} links={links} />
            </li>
          );
        })}
      </ul>
      {rows.length > SHOWN && (
        <button type="button" class="plain" aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? say('ui.showFewer') : say('ui.showMore', { count: rows.length - SHOWN })}
        </button>
      )}
    </div>
  );
}

/**
 * Keeps an ending such as -ed on one line. A browser would otherwise break the line after the hyphen, which is part of
 * the ending.
 */
function keepEndings(name: string): ComponentChildren {
  return name.split(/((?<!\S)-\S+)/).map((part, i) =>
    i % 2 === 1 ? (
      <span key={part} class="ending">
        {part}
      </span>
    ) : (
      part
    ),
  );
}

function describeGap({ opens, words }: Gap, step: number | null): string {
  const opened =
    opens > 0 ? say('ui.opensPlaces', { count: opens }) : say('ui.needMore', { count: words.length });
  return step === null ? opened : `${say('ui.step', { step })} · ${opened}`;
}
