import { useState } from 'preact/hooks';
import type { Judge } from '../../../analyze/index.ts';
import { loadSwapper } from '../../../host/data/load-swapper.ts';
import type { StoryWord } from '../../../host/store/passages-store.ts';
import type { ShadedLine } from '../../../passage/shade-line.ts';
import { say, sayWith } from '../../../wording/say.ts';
import type { TextEdit } from '../passage-editor.ts';
import { sayDecimal } from '../say-decimal.ts';
import { listChanges } from './list-changes.ts';
import { type Change, describeDistance } from './plan-changes.ts';
import {
  isOutdated,
  makeTicked,
  NO_PLAN,
  type PlanState,
  type Proposal,
  propose,
  tick,
  tickAll,
} from './plan-state.ts';
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

/** Proposes the fewest changes to a reach; the teacher ticks those to make, and nothing is changed before. */
export function PlanView({ text, shade, judge, storyWords, onEdit, onStoryWords }: PlanViewProps) {
  const [plan, setPlan] = useState(NO_PLAN);
  const { target, mostStoryWords, dropsMore, proposal, fault } = plan;
  const isOld = isOutdated(plan, text);

  const ask = async (): Promise<void> => {
    try {
      const possible = listChanges(text, shade, judge, await loadSwapper(), new Set(storyWords));
      setPlan((now) => propose(now, text, possible));
    } catch (error) {
      const why = error instanceof Error ? error.message : String(error);
      setPlan((now) => ({ ...now, fault: why }));
    }
  };
  const make = (): void => {
    const made = makeTicked(plan);
    onEdit(made.edits);
    onStoryWords(made.storyWords);
    setPlan((now) => ({ ...now, proposal: null }));
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
            onChange={(event) => {
              const target = Number(event.currentTarget.value);
              setPlan((now) => ({ ...now, target }));
            }}
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
            value={String(mostStoryWords)}
            onChange={(event) => {
              const mostStoryWords = Number(event.currentTarget.value);
              setPlan((now) => ({ ...now, mostStoryWords }));
            }}
          >
            {[0, 1, 2, 3, 5, 8].map((count) => (
              <option key={count} value={String(count)}>
                {say('desk.countStoryWords', { count })}
              </option>
            ))}
          </select>
        </p>
        <label class="drop-more">
          <input
            type="checkbox"
            checked={dropsMore}
            onChange={(event) => {
              const { checked } = event.currentTarget;
              setPlan((now) => ({ ...now, dropsMore: checked }));
            }}
          />
          <span>{say('desk.dropMore')}</span>
        </label>
        <button type="button" class="action" onClick={() => void ask()}>
          {say('desk.propose')}
        </button>
        <div role="status">
          {fault !== null && <p class="note note-wrong">{say('desk.planFailed', { why: fault })}</p>}
          {proposal && !isOld && describeEnd(proposal, target)}
          {isOld && <p class="quiet">{say('desk.proposeAgain')}</p>}
        </div>
        {proposal && !isOld && proposal.planned.length > 0 && (
          <PlannedChanges plan={plan} proposal={proposal} onPlan={setPlan} onMake={make} />
        )}
        <p class="quiet">{say('desk.aboutBetts')}</p>
      </div>
    </details>
  );
}

interface PlannedChangesProps {
  readonly plan: PlanState;
  readonly proposal: Proposal;
  readonly onPlan: (change: (plan: PlanState) => PlanState) => void;
  readonly onMake: () => void;
}

/** The changes that are proposed, each to be ticked. */
function PlannedChanges({ plan, proposal, onPlan, onMake }: PlannedChangesProps) {
  return (
    <>
      <ol class="planned">
        {proposal.planned.map(({ change, before, after }) => (
          <li key={keyOf(change)}>
            <label>
              <input
                type="checkbox"
                checked={plan.ticked.has(change)}
                onChange={(event) => {
                  const { checked } = event.currentTarget;
                  onPlan((now) => tick(now, change, checked));
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
        <button type="button" class="action" disabled={plan.ticked.size === 0} onClick={onMake}>
          {say('desk.makeTicked')}
        </button>
        <button type="button" class="plain" onClick={() => onPlan(tickAll)}>
          {say('desk.tickAll')}
        </button>
      </p>
    </>
  );
}

/** First how far the text is from the target, then how many words stay beyond the group. */
function describeEnd({ planned, possible }: Proposal, target: number) {
  const words = possible.places;
  if (words.length === 0) return <p class="quiet">{say('desk.noChanges')}</p>;
  const { distance, left } = describeDistance(words, planned, target);
  if (planned.length === 0 && distance === 'near') return <p class="quiet">{say('desk.noChanges')}</p>;
  const drops = planned.filter(({ change }) => change.kind === 'drop').length;
  const count = planned.length;
  return (
    <>
      <p>
        {distance === 'near' && say('desk.textIsNear', { count })}
        {distance === 'some-way' && say('desk.textIsSomeWay', { count })}
        {distance === 'too-far' && say('desk.textIsTooFar', { count })}
      </p>
      <p class="quiet">
        {say('desk.sentencesLeftOut', { count: drops, all: possible.sentences.length })}{' '}
        {say('desk.wordsLeft', { count: left })}
      </p>
    </>
  );
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
