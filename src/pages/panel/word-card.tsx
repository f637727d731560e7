import type { CountsAs } from '../../analyze/types.ts';
import type { WordExplanation, WordSwap } from '../../contract/page-contract.ts';
import { CountsAsChoice } from '../../ui/counts-as.tsx';
import '../../ui/counts-as.css';
import { patternNames } from '../../ui/pattern-names.ts';
import { MarkedWord, ReadingsView } from '../../ui/reading-view.tsx';
import { standingSentence } from '../../ui/standing-sentence.ts';
import '../../ui/reading-view.css';
import './word-card.css';
import { say } from '../../wording/say.ts';
import { Swaps } from './swaps.tsx';

interface WordCardProps {
  readonly explanation: WordExplanation;
  /** Decodable words with the same meaning; null while the search runs, or when no swaps are wanted. */
  readonly swaps: readonly WordSwap[] | null;
  readonly tab: number;
  /** How the word counts for the group. */
  readonly counts: CountsAs;
  readonly onCounts: (as: CountsAs, says: string) => void;
  readonly onNext: () => void;
  readonly onClose: () => void;
}

/**
 * Shows the analysis of one word: its spellings with their sounds, base and endings, syllables, and the missing
 * patterns.
 */
export function WordCard({ explanation, swaps, tab, counts, onCounts, onNext, onClose }: WordCardProps) {
  const { analysis, verdict } = explanation;
  const { word, readings } = analysis;
  return (
    <section
      class="card"
      aria-label={say('panel.theWord', { word })}
      onKeyDown={(event) => event.key === 'Escape' && onClose()}
    >
      <div class="card-head">
        <p class="card-word">
          {readings.length === 1 ? <MarkedWord word={word} reading={readings[0]!} /> : word}
        </p>
        <button type="button" class="plain" onClick={onNext}>
          {say('panel.nextPlace')}
        </button>
        <button type="button" class="plain" onClick={onClose}>
          {say('panel.close')}
        </button>
      </div>
      <p class={`standing standing-${verdict.standing}`}>{standingSentence(verdict)}</p>
      <ReadingsView word={word} analysis={analysis} missing={verdict.missing} style={explanation.sounds} />
      {verdict.missing.length > 0 && (
        <p>
          <span class="quiet">{say('panel.stillNeeded')}</span> {patternNames(verdict.missing)}
        </p>
      )}
      {swaps && (
        <p class="swaps">
          <Swaps swaps={swaps} word={word} tab={tab} />
        </p>
      )}
      <CountsAsChoice word={word} counts={counts} onCounts={onCounts} />
    </section>
  );
}
