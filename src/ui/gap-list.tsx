import { useState } from 'preact/hooks';
import type { Gap, PatternId } from '../analyze/types.ts';
import { patternLabel } from '../marks/pattern-label.ts';
import './gap-list.css';
import { useKeptFocus } from './use-kept-focus.ts';
import { WordButtons, type WordLinks } from './word-buttons.tsx';

const SHOWN = 6;

interface GapListProps {
  readonly gaps: readonly Gap[];
  readonly links: WordLinks;
  readonly onTaught: (pattern: PatternId) => void;
}

/** The patterns this page asks for and the group lacks, those that open most words first. */
export function GapList({ gaps, links, onTaught }: GapListProps) {
  const [all, setAll] = useState(false);
  const { list, leave } = useKeptFocus<HTMLUListElement>(gaps);
  if (gaps.length === 0) return null;
  const shown = all ? gaps : gaps.slice(0, SHOWN);
  return (
    <section aria-labelledby="gaps-title">
      <h2 id="gaps-title">Missing patterns</h2>
      <ul class="gaps" ref={list}>
        {shown.map((gap, i) => (
          <li key={gap.pattern} class="gap">
            <div class="gap-head">
              <h3>{patternLabel(gap.pattern)}</h3>
              <label class="tick">
                <input
                  type="checkbox"
                  checked={false}
                  onChange={() => {
                    leave(i);
                    onTaught(gap.pattern);
                  }}
                />{' '}
                taught<span class="unseen">: {patternLabel(gap.pattern)}</span>
              </label>
            </div>
            <p class="quiet">{describeOpens(gap)}</p>
            <WordButtons list={gap.pattern} words={gap.words} links={links} />
          </li>
        ))}
      </ul>
      {gaps.length > SHOWN && (
        <button type="button" class="plain" aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? 'Show fewer' : `Show ${gaps.length - SHOWN} more`}
        </button>
      )}
    </section>
  );
}

function describeOpens({ opens, words }: Gap): string {
  if (opens > 0) return `Teaching it opens ${opens === 1 ? 'one place' : `${opens} places`} in the text`;
  return `${words.length === 1 ? 'The word needs' : 'These words need'} something else too`;
}
