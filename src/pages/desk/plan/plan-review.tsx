import { flushSync } from 'preact/compat';
import { useEffect, useMemo, useRef, useState } from 'preact/hooks';
import { say } from '../../../wording/say.ts';
import { sayDecimal } from '../say-decimal.ts';
import type { Judging } from '../use-report.ts';
import { countFigures } from './count-figures.ts';
import { createCounter } from './list-changes.ts';
import { markAfter, markBefore, textAfter } from './mark-plan.ts';
import { type Change, describeDistance, type HowFar } from './plan-changes.ts';
import { choose, makeTicked, othersFor, type Proposal, tick, tickAll } from './plan-state.ts';
import type { Planner } from './use-plan.ts';
import './plan.css';

interface PlanReviewProps {
  readonly planner: Planner;
  readonly proposal: Proposal;
  readonly judging: Judging;
  readonly storyWords: readonly string[];
  /**
   * Finds the first step of the group's sequence at which the text is as readable as wanted; returns null if no step is
   * enough.
   */
  readonly findStep: (target: number) => number | null;
  /** The address of the report on this text. */
  readonly report: string;
  /** Goes to the text, so that the teacher can rewrite it by hand. */
  readonly onRewrite: () => void;
}

/**
 * Shows how far the text is from its target, and the text before and after the plan. Each change can be ticked in its
 * place.
 */
export function PlanReview(props: PlanReviewProps) {
  const { planner, proposal, judging, storyWords } = props;
  const { plan, change, make, close } = planner;
  const heading = useRef<HTMLHeadingElement>(null);
  const [shown, setShown] = useState<Change | null>(null);
  const far = useMemo(
    () => describeDistance(proposal.possible.places, proposal.planned, plan.target),
    [proposal],
  );
  const before = useMemo(() => markBefore(plan), [proposal, plan.ticked]);
  const after = useMemo(() => markAfter(plan), [proposal, plan.ticked]);
  useEffect(() => heading.current?.focus(), [proposal]);
  const none = proposal.planned.length === 0;
  const take = (changed: Change, isTicked: boolean): void => change((now) => tick(now, changed, isTicked));
  return (
    <section class="plan-review" aria-labelledby="plan-distance">
      <h3 id="plan-distance" ref={heading} tabIndex={-1}>
        {none && far.distance !== 'too-far'
          ? say('desk.noChanges')
          : sayDistance(far, proposal.planned.length)}
      </h3>
      {far.distance === 'too-far' && <WaysOut {...props} />}
      <PlanFigures {...{ planner, proposal, judging, storyWords }} />
      {!none && (
        <>
          <p class="quiet">{say('desk.aboutMarks')}</p>
          <p class="plan-shown" role="status">
            {shown ? labelOf(shown, proposal) : ' '}
          </p>
          {shown && othersFor(shown, proposal).length > 0 && (
            <Others
              shown={shown}
              proposal={proposal}
              onChoose={(other) => {
                change((now) => choose(now, other));
                setShown(other);
              }}
            />
          )}
          <div class="compare">
            <section aria-label={say('desk.before')}>
              <h4>{say('desk.before')}</h4>
              <p class="compared" lang="en" dir="ltr">
                {before.map(({ text, change }, i) =>
                  change === null ? (
                    text
                  ) : (
                    <label
                      key={i}
                      class={`change change-${change.kind}${plan.ticked.has(change) ? ' is-taken' : ''}`}
                      onPointerEnter={() => setShown(change)}
                    >
                      <input
                        type="checkbox"
                        checked={plan.ticked.has(change)}
                        aria-label={labelOf(change, proposal)}
                        onFocus={() => setShown(change)}
                        onChange={(event) => take(change, event.currentTarget.checked)}
                        onKeyDown={(event) => {
                          const isTaken = TAKES[event.key.toLowerCase()];
                          if (isTaken === undefined || event.ctrlKey || event.metaKey || event.altKey) return;
                          event.preventDefault();
                          take(change, isTaken);
                          goOn(event.currentTarget, change, before);
                        }}
                      />
                      {text}
                    </label>
                  ),
                )}
              </p>
            </section>
            <section aria-label={say('desk.after')}>
              <h4>{say('desk.after')}</h4>
              <p class="compared" lang="en" dir="ltr">
                {after.map(({ text, isNew }, i) => (isNew ? <ins key={i}>{text}</ins> : text))}
              </p>
            </section>
          </div>
        </>
      )}
      <p class="row">
        {!none && (
          <>
            <button type="button" class="action" disabled={plan.ticked.size === 0} onClick={make}>
              {say('desk.makeTicked')}
            </button>
            <button type="button" class="plain" onClick={() => change(tickAll)}>
              {say('desk.tickAll')}
            </button>
          </>
        )}
        <button type="button" class="plain" onClick={close}>
          {say('desk.closePlan')}
        </button>
      </p>
    </section>
  );
}

/** Lists the other rewritings of a sentence, each of which can replace the shown rewriting. */
function Others({
  shown,
  proposal,
  onChoose,
}: {
  readonly shown: Change;
  readonly proposal: Proposal;
  readonly onChoose: (other: Change) => void;
}) {
  return (
    <ul class="plan-others" aria-label={say('desk.otherRewritings')}>
      {othersFor(shown, proposal).map((other) =>
        other.kind === 'rewrite' ? (
          <li key={other.text}>
            <span lang="en">{other.text}</span>{' '}
            <button type="button" class="plain" onClick={() => onChoose(other)}>
              {say('desk.useRewriting')}
            </button>
          </li>
        ) : null,
      )}
    </ul>
  );
}

/** The keys on a change: A takes the change, R refuses the change, and both move to the next change. */
const TAKES: Readonly<Record<string, boolean>> = { a: true, r: false };

/** Moves the focus to the first mark of the next change. */
function goOn(input: HTMLInputElement, change: Change, pieces: ReturnType<typeof markBefore>): void {
  const all = [...(input.closest('.compared')?.querySelectorAll('input') ?? [])];
  const marks = pieces.filter((piece) => piece.change !== null);
  const next = marks.findIndex((piece, i) => i > all.indexOf(input) && piece.change !== change);
  all[next]?.focus();
}

function sayDistance({ distance, sentences, same, shortened }: HowFar, count: number): string {
  if (distance === 'too-far') return say('desk.textIsTooFar', { count: same, all: sentences });
  if (distance === 'near') return say('desk.textIsNear', { count });
  return `${say('desk.textIsSomeWay', { count })} ${say('desk.sentencesShortened', { count: shortened, all: sentences })}`;
}

/** Shows other ways to use a text that is too far from its target. */
function WaysOut({ planner, findStep, report, onRewrite }: PlanReviewProps) {
  const { target } = planner.plan;
  const step = useMemo(() => findStep(target), [findStep, target]);
  return (
    <p class="row">
      <button type="button" class="plain" onClick={planner.close}>
        {say('desk.readItAloud')}
      </button>
      <a class="plain" href={report} target="_blank" rel="noopener">
        {step === null ? say('desk.findItsStep') : say('desk.takeItAtStep', { step })}
      </a>
      <button
        type="button"
        class="plain"
        onClick={() => {
          flushSync(planner.close);
          onRewrite();
        }}
      >
        {say('desk.rewriteIt')}
      </button>
    </p>
  );
}

/** Shows the target, the current figures, and the figures with the ticked changes. */
function PlanFigures({
  planner,
  proposal,
  judging,
  storyWords,
}: Pick<PlanReviewProps, 'planner' | 'proposal' | 'judging' | 'storyWords'>) {
  const { plan } = planner;
  const { shade } = judging;
  const now = useMemo(
    () => countFigures(proposal.text, createCounter({ shade, known: new Set(storyWords) })),
    [proposal, shade, storyWords],
  );
  const { taught, planned } = useMemo(() => {
    const { storyWords: words } = makeTicked(plan);
    const taught = [...storyWords, ...words.map(({ word }) => word)];
    return {
      taught,
      planned: countFigures(textAfter(plan), createCounter({ shade, known: new Set(taught) })),
    };
  }, [proposal, plan.ticked, shade, storyWords]);
  const percent = (share: number): string => say('desk.percent', { percent: sayDecimal(share, 1) });
  const wanted = plan.longest === null ? '' : say('desk.atMost', { count: plan.longest });
  const rows = [
    [
      say('desk.reach'),
      percent(now.readable),
      percent(planned.readable),
      say('desk.atLeast', { percent: plan.target }),
    ],
    [
      say('desk.storyWords'),
      storyWords.length,
      taught.length,
      say('desk.atMost', { count: plan.mostStoryWords }),
    ],
    [say('desk.longestSentence'), now.longest, planned.longest, wanted],
    [say('desk.wordsNotRead'), now.left, planned.left, ''],
  ];
  return (
    <table class="plan-figures">
      <thead>
        <tr>
          <td />
          <th scope="col">{say('desk.now')}</th>
          <th scope="col">{say('desk.withTicked')}</th>
          <th scope="col">{say('desk.wanted')}</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(([name, ...figures]) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            {figures.map((figure, i) => (
              <td key={i}>{figure}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Returns a text that describes a change. */
function labelOf(change: Change, { possible, text }: Proposal): string {
  if (change.kind === 'story-word') return say('desk.teachAsStoryWord', { word: change.word });
  if (change.kind === 'rewrite') return change.what;
  if (change.kind === 'swap') {
    const { swap, word, places } = change;
    if (swap.trim() === '') return say('desk.takeOut', { word });
    return say('desk.sayFor', { swap, word, count: places.length });
  }
  const { from, to } = possible.sentences[change.sentence]!;
  const sentence = text.slice(from, to).trim();
  const shown = sentence.length > 80 ? `${sentence.slice(0, 80).trimEnd()}…` : sentence;
  return say('desk.leaveOut', { sentence: shown });
}
