import type { PatternId, Reading, WordAnalysis } from '../analyze/types.ts';
import { markWord } from '../marks/mark-word.ts';
import { keyWord, patternLabel } from '../marks/pattern-label.ts';
import { soundName } from '../marks/sound-names.ts';
import { describeMaking } from './describe-change.ts';
import { describeIrregular } from './describe-irregular.ts';
import { syllableName } from './syllable-name.ts';

// Its style is reading-view.css, taken in by whoever shows it: a page of the extension and a card in a web page
// load styles in different ways.

const GUESSES: Partial<Record<Reading['source'], string>> = {
  derived: 'Not in the dictionary; put together from words that are.',
  rule: 'A guess: not in the dictionary, read by rule.',
  guess: 'A guess: not in the dictionary.',
  none: 'Not in the dictionary, and too unusual to read by rule.',
};

interface MarkedWordProps {
  readonly word: string;
  readonly reading: Reading;
}

/** A word with the marks of a dictionary; a screen reader says it plainly. */
export function MarkedWord({ word, reading }: MarkedWordProps) {
  return (
    <>
      <span class="unseen">{word}</span>
      <span class="marked" aria-hidden="true">
        {markWord(word, reading).map(({ text, affix }, i) => (
          <span key={i} class={affix ? 'marked-affix' : undefined}>
            {text}
          </span>
        ))}
      </span>
    </>
  );
}

interface ReadingsProps {
  /** The word as it is written. */
  readonly word: string;
  readonly analysis: WordAnalysis;
  /** Patterns the group lacks. */
  readonly missing: readonly PatternId[];
}

/** Every reading of a word taken apart; where there are several, each under the word in its own marks. */
export function ReadingsView({ word, analysis: { readings, homograph }, missing }: ReadingsProps) {
  return (
    <>
      {homograph && (
        <p class="quiet">Different words are spelt like this; which one it is, the sentence tells.</p>
      )}
      {readings.map((reading, i) => (
        <div class="reading" key={i}>
          {readings.length > 1 && (
            <p class="reading-word">
              <MarkedWord word={word} reading={reading} />
            </p>
          )}
          <ReadingView reading={reading} missing={missing} />
        </div>
      ))}
    </>
  );
}

function ReadingView({ reading, missing }: { reading: Reading; missing: readonly PatternId[] }) {
  const { units, syllables, base, affixes, source } = reading;
  const making = describeMaking(base, affixes);
  const odd = describeIrregular(units);
  return (
    <>
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
              {pattern !== 'irregular' && <span class="unit-key">{keyWord(pattern)}</span>}
            </li>
          ))}
        </ol>
      )}
      {syllables.length > 1 && (
        <p>
          <span class="quiet">syllables</span>{' '}
          {syllables.map(({ text, type }, i) => (
            <>
              {i > 0 && ' · '}
              <span class="syllable">
                <span class="spelt">{text}</span> <span class="quiet">{syllableName(type)}</span>
              </span>
            </>
          ))}
        </p>
      )}
      {making && (
        <p>
          <span class="quiet">made of</span> <span class="spelt">{making}</span>
        </p>
      )}
      {odd && (
        <p>
          <span class="quiet">by sight:</span> {odd}
        </p>
      )}
      {GUESSES[source] && <p class="quiet">{GUESSES[source]}</p>}
    </>
  );
}
