import { useState } from 'preact/hooks';
import { catalogue } from '../analyze/index.ts';
import type { Gap } from '../analyze/types.ts';
import { WordButtons } from './word-buttons.tsx';

const patterns = new Map(catalogue.map((pattern) => [pattern.id, pattern]));
const SHOWN = 6;

interface GapListProps {
  readonly gaps: readonly Gap[];
  readonly onWord: (word: string) => void;
  readonly onTaught: (pattern: string) => void;
}

/** The patterns this page asks for and the group lacks, those that open most words first. */
export function GapList({ gaps, onWord, onTaught }: GapListProps) {
  const [all, setAll] = useState(false);
  const shown = all ? gaps : gaps.slice(0, SHOWN);
  return (
    <section aria-labelledby="gaps-title">
      <h2 id="gaps-title">Missing patterns</h2>
      <ul class="gaps">
        {shown.map((gap) => (
          <li key={gap.pattern} class="gap">
            <div class="gap-head">
              <h3>{patterns.get(gap.pattern)?.label ?? gap.pattern}</h3>
              <label class="taught">
                <input type="checkbox" checked={false} onChange={() => onTaught(gap.pattern)} /> taught
              </label>
            </div>
            <p class="quiet">{describeOpens(gap)}</p>
            <WordButtons words={gap.words} onWord={onWord} />
          </li>
        ))}
      </ul>
      {gaps.length > SHOWN && (
        <button type="button" class="plain" onClick={() => setAll(!all)}>
          {all ? 'Show fewer' : `Show ${gaps.length - SHOWN} more`}
        </button>
      )}
    </section>
  );
}

function describeOpens({ opens, words }: Gap): string {
  const needed = words.length === 1 ? 'one word needs it' : `${words.length} words need it`;
  if (opens === 0) return `${needed}, along with something else`;
  return `${needed}; taught alone it opens ${opens === 1 ? 'one place' : `${opens} places`} in the text`;
}
