import type { ComponentChildren } from 'preact';
import { useState } from 'preact/hooks';
import type { Gap, PatternId } from '../analyze/types.ts';
import './gap-list.css';
import { say } from '../wording/say.ts';
import { patternName } from './pattern-name.ts';
import { useKeptFocus } from './use-kept-focus.ts';
import { WordButtons, type WordLinks } from './word-buttons.tsx';

const SHOWN = 6;

interface GapListProps {
  readonly gaps: readonly Gap[];
  readonly links: WordLinks;
  readonly onTaught: (pattern: PatternId) => void;
}

/** The patterns this page asks for and the group lacks, those that open most words first, under their heading. */
export function GapList(props: GapListProps) {
  if (props.gaps.length === 0) return null;
  return (
    <section aria-labelledby="gaps-title">
      <h2 id="gaps-title">{say('ui.missingPatterns')}</h2>
      <GapRows {...props} />
    </section>
  );
}

interface GapRowsProps extends GapListProps {
  /** The step that teaches a pattern, to be said in its row; null where it is not said. */
  readonly stepOf?: (pattern: PatternId) => number | null;
}

/** Missing patterns in the order given, each with its words and a box to mark it as taught. */
export function GapRows({ gaps, links, onTaught, stepOf = () => null }: GapRowsProps) {
  const [all, setAll] = useState(false);
  const { list, leave } = useKeptFocus<HTMLUListElement>(gaps.map(({ pattern }) => pattern).join());
  const shown = all ? gaps : gaps.slice(0, SHOWN);
  return (
    <>
      <ul class="gaps" ref={list}>
        {shown.map((gap, i) => (
          <li key={gap.pattern} class="gap">
            <div class="gap-head">
              <h3>{keepEndings(patternName(gap.pattern))}</h3>
              <label class="tick">
                <input
                  type="checkbox"
                  checked={false}
                  onChange={() => {
                    leave(i);
                    onTaught(gap.pattern);
                  }}
                />{' '}
                {say('ui.taught')}
                <span class="unseen">: {patternName(gap.pattern)}</span>
              </label>
            </div>
            <p class="quiet">{describeGap(gap, stepOf(gap.pattern))}</p>
            <WordButtons list={gap.pattern} words={gap.words} links={links} />
          </li>
        ))}
      </ul>
      {gaps.length > SHOWN && (
        <button type="button" class="plain" aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? say('ui.showFewer') : say('ui.showMore', { count: gaps.length - SHOWN })}
        </button>
      )}
    </>
  );
}

/** A browser breaks a line behind the hyphen of -ed, which is a part of the ending. */
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
