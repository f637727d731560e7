import { useState } from 'preact/hooks';
import type { Judge } from '../../analyze/index.ts';
import { loadSwapper } from '../../host/load-swapper.ts';
import type { StoryWord } from '../../host/passages-store.ts';
import type { ShadedLine } from '../../passage/shade-line.ts';
import type { TextEdit } from '../passage-editor.ts';
import { listChanges, type PossibleChanges } from './list-changes.ts';
import { type Change, type PlannedChange, planChanges } from './plan-changes.ts';
import './plan.css';

/**
 * Betts (Foundations of Reading Instruction, 1946; from memory) took 99 of 100 words read rightly for reading alone,
 * 95 for reading with help. They were found on children reading, not on what can be decoded.
 */
const TARGETS: readonly (readonly [percent: number, says: string])[] = [
  [90, '90%'],
  [95, '95%, with help (Betts 1946)'],
  [99, '99%, alone (Betts 1946)'],
  [100, 'every word'],
];

interface PlanViewProps {
  readonly text: string;
  readonly shade: (line: string) => ShadedLine;
  readonly judge: Judge;
  readonly storyWords: readonly string[];
  readonly onEdit: (edits: readonly TextEdit[]) => void;
  readonly onStoryWords: (words: readonly StoryWord[]) => void;
}

interface Proposal {
  readonly possible: PossibleChanges;
  readonly planned: readonly PlannedChange[];
  readonly text: string;
}

/** Proposes the fewest changes to a reach; the teacher ticks those to make, and nothing is changed before. */
export function PlanView({ text, shade, judge, storyWords, onEdit, onStoryWords }: PlanViewProps) {
  const [target, setTarget] = useState(95);
  const [most, setMost] = useState(3);
  const [proposal, setProposal] = useState<Proposal | null>(null);
  const [ticked, setTicked] = useState<ReadonlySet<Change>>(new Set());
  const [failed, setFailed] = useState(false);
  const isOld = proposal !== null && proposal.text !== text;

  const propose = async (): Promise<void> => {
    try {
      const possible = listChanges(text, shade, judge, await loadSwapper(), new Set(storyWords));
      const planned = planChanges(possible.places, possible.changes, { target, storyWords: most });
      setProposal({ possible, planned, text });
      setTicked(new Set());
      setFailed(false);
    } catch {
      setFailed(true);
    }
  };
  const make = (): void => {
    if (!proposal) return;
    const chosen = proposal.planned.map(({ change }) => change).filter((change) => ticked.has(change));
    onEdit(editsFor(chosen, proposal));
    onStoryWords(chosen.filter((change) => change.kind === 'story-word'));
    setProposal(null);
  };
  return (
    <details class="plan">
      <summary>Plan the changes</summary>
      <div class="plan-body">
        <p class="row">
          <label for="plan-target">Bring it to</label>
          <select
            id="plan-target"
            class="field field-short"
            value={String(target)}
            onChange={(event) => setTarget(Number(event.currentTarget.value))}
          >
            {TARGETS.map(([percent, says]) => (
              <option key={percent} value={String(percent)}>
                {says}
              </option>
            ))}
          </select>
          <label for="plan-words">with at most</label>
          <select
            id="plan-words"
            class="field field-short"
            value={String(most)}
            onChange={(event) => setMost(Number(event.currentTarget.value))}
          >
            {[0, 1, 2, 3, 5, 8].map((count) => (
              <option key={count} value={String(count)}>
                {count === 1 ? '1 story word' : `${count} story words`}
              </option>
            ))}
          </select>
        </p>
        <button type="button" class="action" onClick={() => void propose()}>
          Propose changes
        </button>
        <div role="status">
          {failed && <p class="note note-wrong">The table of swaps could not be read. Reload this page.</p>}
          {proposal && !isOld && describeEnd(proposal, target)}
          {isOld && <p class="quiet">The text has changed since; propose again.</p>}
        </div>
        {proposal && !isOld && proposal.planned.length > 0 && (
          <>
            <ol class="planned">
              {proposal.planned.map(({ change, before, after }) => (
                <li key={labelOf(change, proposal)}>
                  <label>
                    <input
                      type="checkbox"
                      checked={ticked.has(change)}
                      onChange={(event) => {
                        const { checked } = event.currentTarget;
                        setTicked(
                          (now) =>
                            new Set(checked ? [...now, change] : [...now].filter((one) => one !== change)),
                        );
                      }}
                    />
                    <span>{labelOf(change, proposal)}</span>
                    <span class="quiet planned-reach">
                      {before.toFixed(1)} → {after.toFixed(1)}%
                    </span>
                  </label>
                </li>
              ))}
            </ol>
            <p class="row">
              <button type="button" class="action" disabled={ticked.size === 0} onClick={make}>
                Make the ticked changes
              </button>
              <button
                type="button"
                class="plain"
                onClick={() => setTicked(new Set(proposal.planned.map(({ change }) => change)))}
              >
                Tick all
              </button>
            </p>
          </>
        )}
        <p class="quiet">
          Betts (1946) took 95 of 100 words for reading with help and 99 for reading alone, of words children
          read rightly. Reach only estimates what can be decoded.
        </p>
      </div>
    </details>
  );
}

function describeEnd({ planned }: Proposal, target: number) {
  const last = planned.at(-1);
  if (!last) return <p class="quiet">It is there already, or nothing is found that helps.</p>;
  if (last.after < target) return <p class="quiet">This is as near as these changes bring it.</p>;
  return null;
}

function labelOf(change: Change, { possible, text }: Proposal): string {
  if (change.kind === 'story-word') return `Teach “${change.word}” as a story word`;
  if (change.kind === 'swap') {
    const times = change.places.length === 1 ? '' : ` (${change.places.length} places)`;
    return `Say “${change.swap}” for “${change.word}”${times}`;
  }
  const { from, to } = possible.sentences[change.sentence]!;
  const sentence = text.slice(from, to).trim();
  return `Leave out “${sentence.length > 80 ? `${sentence.slice(0, 80).trimEnd()}…` : sentence}”`;
}

/** The edits of the text for changes; a swap in a sentence that is left out is not made. */
function editsFor(chosen: readonly Change[], { possible, text }: Proposal): TextEdit[] {
  const dropped = new Set(chosen.flatMap((change) => (change.kind === 'drop' ? [change.sentence] : [])));
  return chosen.flatMap((change): TextEdit[] => {
    if (change.kind === 'story-word') return [];
    if (change.kind === 'drop') {
      const { from, to } = possible.sentences[change.sentence]!;
      const blank = /^[ \t]*/.exec(text.slice(to))![0].length;
      return [{ from, to: to + blank, text: '' }];
    }
    return change.places.flatMap((i) => {
      const { from, to, sentence } = possible.places[i]!;
      if (dropped.has(sentence)) return [];
      const isCapital = /^\p{Lu}/u.test(text.slice(from, to));
      const swap = isCapital ? change.swap.charAt(0).toUpperCase() + change.swap.slice(1) : change.swap;
      const article = possible.articles.get(i);
      return [...(article ? [article] : []), { from, to, text: swap }];
    });
  });
}
