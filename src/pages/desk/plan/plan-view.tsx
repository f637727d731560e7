import { useEffect, useRef } from 'preact/hooks';
import { READING_LEVELS } from '../../../analyze/index.ts';
import { say } from '../../../wording/say.ts';
import { isOutdated, type PlanState } from './plan-state.ts';
import type { Planner } from './use-plan.ts';
import './plan.css';

const TARGETS = [
  [90, 'desk.percent'],
  [READING_LEVELS.withHelp, 'desk.targetWithHelp'],
  [READING_LEVELS.alone, 'desk.targetAlone'],
  [100, 'desk.targetEveryWord'],
] as const;

/** Asks for the fewest changes that bring a text to its target. `PlanReview` shows the changes in place of the text. */
export function PlanView({ planner, text }: { readonly planner: Planner; readonly text: string }) {
  const { plan, isOpen, isAsking, change, ask } = planner;
  const { target, mostStoryWords, longest, dropsMore, fault } = plan;
  const button = useRef<HTMLButtonElement>(null);
  const wasOpen = useRef(false);
  // Closing the plan moves the focus back to the button that asked for the plan.
  useEffect(() => {
    if (wasOpen.current && !isOpen && document.activeElement === document.body) button.current?.focus();
    wasOpen.current = isOpen;
  }, [isOpen]);
  const set = (wanted: Partial<PlanState>): void => change((now) => ({ ...now, ...wanted }));
  return (
    <details class="plan plan-first">
      <summary>{say('desk.planTheChanges')}</summary>
      <div class="plan-body">
        <p class="row">
          <label for="plan-target">{say('desk.bringItTo')}</label>
          <select
            id="plan-target"
            class="field field-short"
            value={String(target)}
            onChange={(event) => set({ target: Number(event.currentTarget.value) })}
          >
            {TARGETS.map(([percent, id]) => (
              <option key={percent} value={String(percent)}>
                {say(id, { percent })}
              </option>
            ))}
          </select>
        </p>
        <p class="row">
          <label for="plan-words">{say('desk.withAtMost')}</label>
          <select
            id="plan-words"
            class="field field-short"
            value={String(mostStoryWords)}
            onChange={(event) => set({ mostStoryWords: Number(event.currentTarget.value) })}
          >
            {[0, 1, 2, 3, 5, 8].map((count) => (
              <option key={count} value={String(count)}>
                {say('desk.countStoryWords', { count })}
              </option>
            ))}
          </select>
        </p>
        <p class="row">
          <label for="plan-longest">{say('desk.sentencesAtMost')}</label>
          <select
            id="plan-longest"
            class="field field-short"
            value={String(longest ?? '')}
            onChange={({ currentTarget: { value } }) => set({ longest: value === '' ? null : Number(value) })}
          >
            <option value="">{say('desk.anyLength')}</option>
            {[8, 10, 12, 15, 20].map((count) => (
              <option key={count} value={String(count)}>
                {say('desk.countWords', { count })}
              </option>
            ))}
          </select>
        </p>
        <label class="drop-more">
          <input
            type="checkbox"
            checked={dropsMore}
            onChange={(event) => set({ dropsMore: event.currentTarget.checked })}
          />
          <span>{say('desk.dropMore')}</span>
        </label>
        <button ref={button} type="button" class="action" aria-disabled={isAsking} onClick={() => void ask()}>
          {say('desk.propose')}
        </button>
        <div role="status">
          {isAsking && <p class="quiet">{say('desk.planning')}</p>}
          {fault !== null && <p class="note note-wrong">{say('desk.planFailed', { why: fault })}</p>}
          {isOutdated(plan, text) && <p class="quiet">{say('desk.proposeAgain')}</p>}
        </div>
        <p class="quiet">{say('desk.aboutBetts')}</p>
      </div>
    </details>
  );
}
