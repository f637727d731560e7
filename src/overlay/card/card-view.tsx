import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { splitKey } from '../../analyze/index.ts';
import type { Accent, PatternId, WordKey } from '../../analyze/types.ts';
import type { WordAction, WordExplanation, WordSwap } from '../../contract/page-contract.ts';
import { CountsAsChoice } from '../../ui/counts-as.tsx';
import { FoldedLegend } from '../../ui/mark-legend.tsx';
import { patternName } from '../../ui/pattern-name.ts';
import { MarkedWord, ReadingsView } from '../../ui/reading-view.tsx';
import { standingSentence } from '../../ui/standing-sentence.ts';
import { say } from '../../wording/say.ts';

interface CardViewProps {
  readonly word: WordKey;
  /** The explanation of the word, or the sentence that says why there is none. */
  readonly content: WordExplanation | Error;
  /** Substitutes, once they are known. A card without substitutes is not an error. */
  readonly swaps: readonly WordSwap[];
  /** The reason why the card does nothing for now; null when the card works. */
  readonly hindrance: string | null;
  /** Resolves once the word has been checked again. Null where the page could see or steal a click on the card. */
  readonly onAct: ((action: WordAction) => Promise<void>) | null;
  readonly onSpeak: (text: string, accent?: Accent) => Promise<void>;
  readonly onClose: () => void;
  /** Called when the size of the card may have changed. */
  readonly onResize: () => void;
}

interface Said {
  readonly text: string;
  readonly fault: boolean;
  /** The action that undoes the action this message reports. */
  readonly undo?: WordAction;
}

/**
 * The patterns that were missing at any time since the card opened, with their steps. A row stays in its place when its
 * pattern is taught.
 */
interface MissingRows {
  readonly steps: Map<PatternId, number | null>;
  readonly taught: Set<PatternId>;
  readonly notYet: Set<PatternId>;
}

/** The content of a card: the word split into its parts, its missing patterns, and the teacher's choices for it. */
export function CardView({
  word,
  content,
  swaps,
  hindrance,
  onAct,
  onSpeak,
  onClose,
  onResize,
}: CardViewProps) {
  const [said, setSaid] = useState<Said>({ text: '', fault: false });
  const busy = useRef(false);
  const status = useRef<HTMLParagraphElement>(null);
  const [rows] = useState<MissingRows>(() => ({
    steps: new Map(),
    taught: new Set(),
    notYet: new Set(),
  }));
  useLayoutEffect(onResize);
  const shown = splitKey(word).word;

  async function attempt(what: () => Promise<void>, done: string, undo?: WordAction): Promise<void> {
    if (busy.current) return;
    busy.current = true;
    try {
      await what();
      setSaid({ text: done, fault: false, ...(undo && { undo }) });
    } catch (error) {
      setSaid({ text: messageOf(error), fault: true });
    }
    busy.current = false;
  }
  const act: Act | null =
    onAct &&
    ((action, done, undo) =>
      void attempt(
        async () => {
          await onAct(action);
          if (action.do === 'teach') rows.taught.add(action.pattern);
          if (action.do === 'unteach') rows.taught.delete(action.pattern);
        },
        done,
        undo,
      ));

  const known = content instanceof Error ? null : content;
  const readings = known?.analysis.readings ?? [];
  for (const id of known?.verdict.missing ?? []) rows.steps.set(id, known?.steps[id] ?? null);
  for (const id of known?.notYet ?? []) rows.notYet.add(id);
  const told: Said = hindrance === null ? said : { text: hindrance, fault: true };
  return (
    <div class="card-inside">
      <div class="card-head">
        <h2 class="card-word" id="word">
          {readings.length === 1 ? <MarkedWord word={shown} reading={readings[0]!} /> : shown}
        </h2>
        <div class="card-tools">
          <button
            type="button"
            class="plain"
            onClick={() =>
              void attempt(() => onSpeak(known?.analysis.word ?? shown, known?.sounds?.accent), '')
            }
          >
            {say('card.hear')}
          </button>
          <button type="button" class="plain" onClick={onClose}>
            {say('card.close')}
          </button>
        </div>
      </div>
      {content instanceof Error ? (
        <p class="standing">{content.message}</p>
      ) : (
        <>
          <p id="standing" class={`standing standing-${content.verdict.standing}`}>
            {standingSentence(content.verdict)}
          </p>
          <ReadingsView
            word={shown}
            analysis={content.analysis}
            missing={content.verdict.missing}
            style={content.sounds}
          />
          {act && <MissingPatterns rows={rows} act={act} />}
          {act && (
            <CountsAsChoice
              word={shown}
              counts={content.counts}
              onCounts={(as, says) => act({ do: as, word }, says, { do: content.counts, word })}
            />
          )}
          {swaps.length > 0 && <Swaps found={swaps} />}
          <FoldedLegend />
        </>
      )}
      <p
        ref={status}
        role="status"
        tabIndex={-1}
        class={told.text && (told.fault ? 'said said-fault' : 'said')}
      >
        {told.text}{' '}
        {act && told.undo && (
          <button
            type="button"
            class="plain"
            onClick={() => {
              // The button disappears, so the keyboard focus moves to the status line nearby.
              status.current?.focus();
              act(told.undo!, say('card.undone'));
            }}
          >
            {say('ui.undo')}
          </button>
        )}
      </p>
    </div>
  );
}

/** Carries out an action, says that it is done, and offers the action that undoes it. */
type Act = (action: WordAction, done: string, undo?: WordAction) => void;

interface MissingPatternsProps {
  readonly rows: MissingRows;
  readonly act: Act;
}

function MissingPatterns({ rows: { steps, taught, notYet }, act }: MissingPatternsProps) {
  if (steps.size === 0) return null;
  return (
    <ul class="missing" aria-label={say('card.stillNeeded')}>
      {[...steps].map(([pattern, step]) => {
        const name = patternName(pattern);
        const teach: WordAction = { do: 'teach', pattern };
        const unteach: WordAction = { do: 'unteach', pattern, notYet: notYet.has(pattern) };
        return (
          <li key={pattern}>
            <h3>{name}</h3>
            {pattern !== 'irregular' && (
              <label class="tick">
                <input
                  type="checkbox"
                  checked={taught.has(pattern)}
                  onChange={({ currentTarget: { checked } }) =>
                    checked
                      ? act(teach, say('card.nowTaught', { pattern: name }), unteach)
                      : act(unteach, say('card.notTaught', { pattern: name }), teach)
                  }
                />{' '}
                {say('card.teach')}
                <span class="unseen"> {name}</span>
              </label>
            )}
            <p class="quiet">{describeStep(pattern, step)}</p>
          </li>
        );
      })}
    </ul>
  );
}

/** Returns a sentence such as `step 31 of your sequence teaches it`. An irregular spelling belongs to no step. */
function describeStep(pattern: PatternId, step: number | null): string {
  if (step !== null) return say('card.taughtAt', { step });
  return pattern === 'irregular' ? say('card.learntBySight') : say('card.noStep');
}

function Swaps({ found }: { found: readonly WordSwap[] }) {
  return (
    <div class="swaps">
      <p class="quiet" id="swaps">
        {say('card.swaps')}
      </p>
      <ul class="swap-words" aria-labelledby="swaps">
        {found.map(({ text, reads }) => (
          <li key={text}>
            <span lang="en" class={reads ? undefined : 'swap-hard'}>
              {text}
            </span>
            {!reads && <span class="unseen"> ({say('ui.beyond')})</span>}
          </li>
        ))}
      </ul>
    </div>
  );
}

function messageOf(error: unknown): string {
  return error instanceof Error ? error.message : say('card.failed');
}
