import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { splitKey } from '../../analyze/index.ts';
import type { Accent, PatternId, Standing, WordKey } from '../../analyze/types.ts';
import type { WordAction, WordExplanation, WordSwap } from '../../contract/page-contract.ts';
import { patternName } from '../../ui/pattern-name.ts';
import { MarkedWord, ReadingsView } from '../../ui/reading-view.tsx';
import { standingSentence } from '../../ui/standing-sentence.ts';
import { say } from '../../wording/say.ts';

interface CardViewProps {
  readonly word: WordKey;
  /** What is known of the word, or the sentence that says why nothing is. */
  readonly content: WordExplanation | Error;
  /** Substitutes, once they are known; a card without them is no fault. */
  readonly swaps: readonly WordSwap[];
  /** Why the card does nothing for now; null where it does. */
  readonly hindrance: string | null;
  /** Resolves once the word has been looked at again; null where the page could see or steal what is done here. */
  readonly onAct: ((action: WordAction) => Promise<void>) | null;
  readonly onSpeak: (text: string, accent?: Accent) => Promise<void>;
  readonly onClose: () => void;
  /** The card may have another size now. */
  readonly onResize: () => void;
}

interface Said {
  readonly text: string;
  readonly fault: boolean;
}

/** What a card shows: the word taken apart, what is missing, and what the teacher may say of it. */
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
  useLayoutEffect(onResize);
  const shown = splitKey(word).word;

  async function attempt(what: () => Promise<void>, done: string): Promise<void> {
    if (busy.current) return;
    busy.current = true;
    try {
      await what();
      setSaid({ text: done, fault: false });
    } catch (error) {
      setSaid({ text: messageOf(error), fault: true });
    }
    busy.current = false;
  }
  const act = onAct && ((action: WordAction, done: string): void => void attempt(() => onAct(action), done));

  const known = content instanceof Error ? null : content;
  const readings = known?.analysis.readings ?? [];
  const told = hindrance === null ? said : { text: hindrance, fault: true };
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
          {act && <MissingPatterns content={content} act={act} />}
          {swaps.length > 0 && <Swaps found={swaps} />}
          {act && <CountsAs word={word} standing={content.verdict.standing} act={act} />}
        </>
      )}
      <p role="status" class={told.text && (told.fault ? 'said said-fault' : 'said')}>
        {told.text}
      </p>
    </div>
  );
}

interface ActProps {
  readonly act: (action: WordAction, done: string) => void;
}

function MissingPatterns({ content: { verdict, steps }, act }: ActProps & { content: WordExplanation }) {
  if (verdict.missing.length === 0) return null;
  return (
    <ul class="missing" aria-label={say('card.stillNeeded')}>
      {verdict.missing.map((pattern) => (
        <li key={pattern}>
          <h3>{patternName(pattern)}</h3>
          {pattern !== 'irregular' && (
            <button
              type="button"
              class="plain"
              onClick={() =>
                act({ do: 'teach', pattern }, say('card.nowTaught', { pattern: patternName(pattern) }))
              }
            >
              {say('card.teach')}
              <span class="unseen"> {patternName(pattern)}</span>
            </button>
          )}
          <p class="quiet">{describeStep(pattern, steps[pattern] ?? null)}</p>
        </li>
      ))}
    </ul>
  );
}

/** `step 31 of your sequence teaches it`; an irregular spelling is no step's matter. */
function describeStep(pattern: PatternId, step: number | null): string {
  if (step !== null) return say('card.taughtAt', { step });
  return pattern === 'irregular' ? say('card.learntBySight') : say('card.noStep');
}

const WAYS = [
  ['by-sight', 'card.bySight', 'card.nowBySight'],
  ['name', 'card.name', 'card.nowName'],
  ['skip', 'card.skip', 'card.nowSkipped'],
] as const;
/** What a word of a standing need not be made again. */
const NEEDLESS: Partial<Record<Standing, readonly string[]>> = {
  reads: ['by-sight'],
  fresh: ['by-sight'],
  'by-sight': ['by-sight'],
  name: ['name'],
  skipped: ['skip'],
};

interface CountsAsProps extends ActProps {
  readonly word: WordKey;
  readonly standing: Standing;
}

function CountsAs({ word, standing, act }: CountsAsProps) {
  const ways = WAYS.filter(([way]) => !NEEDLESS[standing]?.includes(way));
  return (
    <fieldset class="counts" aria-labelledby="counts">
      <span class="quiet" id="counts">
        {say('card.countsAs')}
      </span>
      {ways.map(([way, label, done]) => (
        <button key={way} type="button" class="plain" onClick={() => act({ do: way, word }, say(done))}>
          {say(label)}
        </button>
      ))}
    </fieldset>
  );
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
