import type { WordExplanation } from '../host/messages.ts';
import { patternLabel } from '../ui/pattern-label.ts';
import { MarkedWord, ReadingsView } from '../ui/reading-view.tsx';
import { standingSentence } from '../ui/standing-sentence.ts';
import '../ui/reading-view.css';
import './word-card.css';

interface WordCardProps {
  readonly explanation: WordExplanation;
  readonly onNext: () => void;
  readonly onClose: () => void;
}

/** One word taken apart: its spellings with their sounds, base and endings, syllables, and what is missing. */
export function WordCard({ explanation, onNext, onClose }: WordCardProps) {
  const { analysis, verdict } = explanation;
  const { word, readings } = analysis;
  return (
    <section
      class="card"
      aria-label={`The word ${word}`}
      onKeyDown={(event) => event.key === 'Escape' && onClose()}
    >
      <div class="card-head">
        <p class="card-word">
          {readings.length === 1 ? <MarkedWord word={word} reading={readings[0]!} /> : word}
        </p>
        <button type="button" class="plain" onClick={onNext}>
          next place
        </button>
        <button type="button" class="plain" onClick={onClose}>
          close
        </button>
      </div>
      <p class={`standing standing-${verdict.standing}`}>{standingSentence(verdict.standing)}</p>
      <ReadingsView word={word} analysis={analysis} missing={verdict.missing} />
      {verdict.missing.length > 0 && (
        <p>
          <span class="quiet">still needed</span> {verdict.missing.map(patternLabel).join('; ')}
        </p>
      )}
    </section>
  );
}
