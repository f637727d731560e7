import type { PatternId, Reading } from '../analyze/types.ts';
import type { WordExplanation } from '../host/messages.ts';
import { describeMaking } from '../ui/describe-change.ts';
import { describeIrregular } from '../ui/describe-irregular.ts';
import { patternLabel } from '../ui/pattern-label.ts';
import { soundName } from '../ui/sound-names.ts';
import { standingSentence } from '../ui/standing-sentence.ts';
import { syllableName } from '../ui/syllable-name.ts';
import './word-card.css';

const GUESSES: Partial<Record<Reading['source'], string>> = {
  derived: 'Not in the dictionary; put together from words that are.',
  rule: 'A guess: not in the dictionary, read by rule.',
  guess: 'A guess: not in the dictionary.',
  none: 'Not in the dictionary, and too unusual to read by rule.',
};

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
        <p class="card-word">{word}</p>
        <button type="button" class="plain" onClick={onNext}>
          next place
        </button>
        <button type="button" class="plain" onClick={onClose}>
          close
        </button>
      </div>
      <p class={`standing standing-${verdict.standing}`}>{standingSentence(verdict.standing)}</p>
      {analysis.homograph && (
        <p class="quiet">Different words are spelt like this; which one it is, the sentence tells.</p>
      )}
      {readings.map((reading, i) => (
        <ReadingView key={i} reading={reading} missing={verdict.missing} />
      ))}
      {verdict.missing.length > 0 && (
        <p>
          <span class="quiet">still needed</span> {verdict.missing.map(patternLabel).join('; ')}
        </p>
      )}
    </section>
  );
}

function ReadingView({ reading, missing }: { reading: Reading; missing: readonly PatternId[] }) {
  const { units, syllables, base, affixes, source } = reading;
  const making = describeMaking(base, affixes);
  const odd = describeIrregular(units);
  return (
    <div class="reading">
      {units.length > 0 && (
        <ol class="units" aria-label="Spellings and sounds">
          {units.map(({ letters, sound, pattern, affix }, i) => (
            <li
              key={i}
              class={`unit${affix ? ` unit-${affix}` : ''}${missing.includes(pattern) ? ' unit-missing' : ''}`}
              title={patternLabel(pattern)}
            >
              <span class="unit-letters">{letters}</span>
              <span class="unit-sound">{soundName(sound)}</span>
            </li>
          ))}
        </ol>
      )}
      {syllables.length > 1 && (
        <p>
          <span class="quiet">syllables</span>{' '}
          <span class="syllables">{syllables.map(({ text }) => text).join('·')}</span>{' '}
          <span class="quiet">({syllables.map(({ type }) => syllableName(type)).join(', ')})</span>
        </p>
      )}
      {making && (
        <p>
          <span class="quiet">made of</span> {making}
        </p>
      )}
      {odd && (
        <p>
          <span class="quiet">by sight:</span> {odd}
        </p>
      )}
      {GUESSES[source] && <p class="quiet">{GUESSES[source]}</p>}
    </div>
  );
}
