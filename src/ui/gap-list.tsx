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

/** The patterns this page asks for and the group lacks, those that open most words first. */
export function GapList({ gaps, links, onTaught }: GapListProps) {
  const [all, setAll] = useState(false);
  const { list, leave } = useKeptFocus<HTMLUListElement>(gaps);
  if (gaps.length === 0) return null;
  const shown = all ? gaps : gaps.slice(0, SHOWN);
  return (
    <section aria-labelledby="gaps-title">
      <h2 id="gaps-title">{say('ui.missingPatterns')}</h2>
      <ul class="gaps" ref={list}>
        {shown.map((gap, i) => (
          <li key={gap.pattern} class="gap">
            <div class="gap-head">
              <h3>{patternName(gap.pattern)}</h3>
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
            <p class="quiet">{describeOpens(gap)}</p>
            <WordButtons list={gap.pattern} words={gap.words} links={links} />
          </li>
        ))}
      </ul>
      {gaps.length > SHOWN && (
        <button type="button" class="plain" aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? say('ui.showFewer') : say('ui.showMore', { count: gaps.length - SHOWN })}
        </button>
      )}
    </section>
  );
}

function describeOpens({ opens, words }: Gap): string {
  return opens > 0 ? say('ui.opensPlaces', { count: opens }) : say('ui.needMore', { count: words.length });
}
