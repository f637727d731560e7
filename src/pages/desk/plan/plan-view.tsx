import { useState } from 'preact/hooks';
import type { Judge } from '../../../analyze/index.ts';
import { loadSwapper } from '../../../host/data/load-swapper.ts';
import type { StoryWord } from '../../../host/store/passages-store.ts';
import type { ShadedLine } from '../../../passage/shade-line.ts';
import { say, sayWith } from '../../../wording/say.ts';
import type { TextEdit } from '../passage-editor.ts';
import { sayDecimal } from '../say-decimal.ts';
import { listChanges, type PossibleChanges } from './list-changes.ts';
import { type Change, type PlannedChange, planChanges } from './plan-changes.ts';
import './plan.css';

/**
 * Betts (Foundations of Reading Instruction, 1946; from memory) took 99 of 100 words read rightly for reading alone,
 * 95 for reading with help. They were found on children reading, not on what can be decoded.
 */
const TARGETS = [
  [90, 'desk.percent'],
  [95, 'desk.targetWithHelp'],
  [99, 'desk.targetAlone'],
  [100, 'desk.targetEveryWord'],
] as const;

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
  const [failed, setFailed] = useState<string | null>(null);
  const isOld = proposal !== null && proposal.text !== text;

  const propose = async (): Promise<void> => {
    try {
      const possible = listChanges(text, shade, judge, await loadSwapper(), new Set(storyWords));
      const planned = planChanges(possible.places, possible.changes, { target, storyWords: most });
      setProposal({ possible, planned, text });
      setTicked(new Set());
      setFailed(null);
    } catch (error) {
      setFailed(error instanceof Error ? error.message : String(error));
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
      <summary>{say('desk.planTheChanges')}</summary>
      <div class="plan-body">
        <p class="row">
          <label for="plan-target">{say('desk.bringItTo')}</label>
          <select
            id="plan-target"
            class="field field-short"
            value={String(target)}
            onChange={(event) => setTarget(Number(event.currentTarget.value))}
          >
            {TARGETS.map(([percent, id]) => (
              <option key={percent} value={String(percent)}>
                {say(id, { percent })}
              </option>
            ))}
          </select>
          <label for="plan-words">{say('desk.withAtMost')}</label>
          <select
            id="plan-words"
            class="field field-short"
            value={String(most)}
            onChange={(event) => setMost(Number(event.currentTarget.value))}
          >
            {[0, 1, 2, 3, 5, 8].map((count) => (
              <option key={count} value={String(count)}>
                {say('desk.countStoryWords', { count })}
              </option>
            ))}
          </select>
        </p>
        <button type="button" class="action" onClick={() => void propose()}>
          {say('desk.propose')}
        </button>
        <div role="status">
          {failed !== null && <p class="note note-wrong">{say('desk.planFailed', { why: failed })}</p>}
          {proposal && !isOld && describeEnd(proposal, target)}
          {isOld && <p class="quiet">{say('desk.proposeAgain')}</p>}
        </div>
        {proposal && !isOld && proposal.planned.length > 0 && (
          <>
            <ol class="planned">
              {proposal.planned.map(({ change, before, after }) => (
                <li key={keyOf(change)}>
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
                      {say('desk.reachFromTo', {
                        before: sayDecimal(before, 1),
                        after: sayDecimal(after, 1),
                      })}
                    </span>
                  </label>
                </li>
              ))}
            </ol>
            <p class="row">
              <button type="button" class="action" disabled={ticked.size === 0} onClick={make}>
                {say('desk.makeTicked')}
              </button>
              <button
                type="button"
                class="plain"
                onClick={() => setTicked(new Set(proposal.planned.map(({ change }) => change)))}
              >
                {say('desk.tickAll')}
              </button>
            </p>
          </>
        )}
        <p class="quiet">{say('desk.aboutBetts')}</p>
      </div>
    </details>
  );
}

function describeEnd({ planned }: Proposal, target: number) {
  const last = planned.at(-1);
  if (!last) return <p class="quiet">{say('desk.noChanges')}</p>;
  if (last.after < target) return <p class="quiet">{say('desk.asNearAsItGets')}</p>;
  return null;
}

function labelOf(change: Change, { possible, text }: Proposal) {
  const english = (words: string) => <span lang="en">{words}</span>;
  if (change.kind === 'story-word') return sayWith('desk.teachAsStoryWord', { word: english(change.word) });
  if (change.kind === 'swap') {
    const { swap, word, places } = change;
    return sayWith('desk.sayFor', { swap: english(swap), word: english(word), count: places.length });
  }
  const { from, to } = possible.sentences[change.sentence]!;
  const sentence = text.slice(from, to).trim();
  const shown = sentence.length > 80 ? `${sentence.slice(0, 80).trimEnd()}…` : sentence;
  return sayWith('desk.leaveOut', { sentence: english(shown) });
}

function keyOf(change: Change): string {
  if (change.kind === 'drop') return `drop ${change.sentence}`;
  return change.kind === 'swap' ? `swap ${change.word} ${change.swap}` : `teach ${change.word}`;
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
