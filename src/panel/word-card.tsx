import { useEffect, useState } from 'preact/hooks';
import { catalogue } from '../analyze/index.ts';
import type { Reading, Standing } from '../analyze/types.ts';
import { askBackground } from '../host/client.ts';
import type { WordExplanation } from '../host/messages.ts';
import { describeMaking } from '../ui/describe-change.ts';
import { soundName } from '../ui/sound-names.ts';

const patterns = new Map(catalogue.map((pattern) => [pattern.id, pattern]));

const STANDINGS: Readonly<Record<Standing, string>> = {
  reads: 'The group can decode it.',
  fresh: 'The group can decode it, and it practises this step.',
  'by-sight': 'Taught as a whole word.',
  name: 'Taken for a name; names are not counted.',
  unsure: 'It depends: look at it yourself.',
  beyond: 'Not yet decodable.',
  skipped: 'Left out of the count.',
};
const GUESSES: Partial<Record<Reading['source'], string>> = {
  derived: 'Not in the dictionary; put together from words that are.',
  rule: 'Not in the dictionary; read by rule, so this is a guess.',
  guess: 'Not in the dictionary; this is a guess.',
  none: 'Not in the dictionary, and too unusual to read by rule.',
};

interface WordCardProps {
  readonly word: string;
  /** Changes when the group does, so that the card is asked for anew. */
  readonly version: unknown;
  readonly onNext: () => void;
  readonly onClose: () => void;
}

/** One word taken apart: its spellings with their sounds, base and endings, syllables, and what is missing. */
export function WordCard({ word, version, onNext, onClose }: WordCardProps) {
  const [found, setFound] = useState<WordExplanation | null>(null);
  useEffect(() => {
    let current = true;
    void askBackground('explain', word).then((answer) => current && setFound(answer));
    return () => {
      current = false;
    };
  }, [word, version]);
  if (!found) return null;
  const { analysis, verdict } = found;
  return (
    <section class="card" aria-label={`The word ${word}`}>
      <div class="card-head">
        <h2>{word}</h2>
        <button type="button" class="plain" onClick={onNext}>
          next place
        </button>
        <button type="button" class="plain" onClick={onClose}>
          close
        </button>
      </div>
      <p class={`standing standing-${verdict.standing}`}>{STANDINGS[verdict.standing]}</p>
      {analysis.readings.map((reading) => (
        <ReadingView key={reading.pronunciation} reading={reading} missing={verdict.missing} />
      ))}
      {verdict.missing.length > 0 && (
        <>
          <h3>Still needed</h3>
          <ul class="missing">
            {verdict.missing.map((id) => (
              <li key={id}>{patterns.get(id)?.label ?? id}</li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

function ReadingView({ reading, missing }: { reading: Reading; missing: readonly string[] }) {
  const { units, syllables, base, affixes, source } = reading;
  const making = describeMaking(base, affixes);
  return (
    <div class="reading">
      {units.length > 0 && (
        <ol class="units" aria-label="Spellings and sounds">
          {units.map(({ letters, sound, pattern, affix }, i) => (
            <li
              key={i}
              class={`unit${affix ? ` unit-${affix}` : ''}${missing.includes(pattern) ? ' unit-missing' : ''}`}
              title={patterns.get(pattern)?.label}
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
          <span class="quiet">({syllables.map(({ type }) => type).join(', ')})</span>
        </p>
      )}
      {making && (
        <p>
          <span class="quiet">made of</span> {making}
        </p>
      )}
      {GUESSES[source] && <p class="quiet">{GUESSES[source]}</p>}
    </div>
  );
}
