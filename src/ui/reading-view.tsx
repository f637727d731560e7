import type { SoundStyle } from '../analyze/index.ts';
import type { Affix, PatternId, Reading, SyllableType, WordAnalysis } from '../analyze/types.ts';
import { markWord } from '../marks/mark-word.ts';
import { keyWord } from '../marks/pattern-label.ts';
import { soundName } from '../marks/sound-names.ts';
import { say, type TextId } from '../wording/say.ts';
import { describeIrregular } from './describe-irregular.ts';
import { patternName } from './pattern-name.ts';

// The styles are in reading-view.css. The code that shows this view loads that file itself, because a page of the
// extension and a card in a web page load styles in different ways.

const GUESSES = {
  derived: 'ui.derived',
  rule: 'ui.guessedByRule',
  guess: 'ui.guessed',
  none: 'ui.unreadable',
} as const satisfies Partial<Record<Reading['source'], TextId>>;

interface MarkedWordProps {
  readonly word: string;
  readonly reading: Reading;
}

/** A word with the marks of a dictionary. A screen reader reads the plain word. */
export function MarkedWord({ word, reading }: MarkedWordProps) {
  return (
    <>
      <span class="unseen" lang="en">
        {word}
      </span>
      <span class="marked" aria-hidden="true" lang="en">
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
  /** How sounds are written. The default is the style of American dictionaries. */
  readonly style?: SoundStyle | undefined;
}

/**
 * All readings of a word, taken apart. If there are several, each is shown under the word with the marks of that
 * reading.
 */
export function ReadingsView({ word, analysis: { readings, homograph }, missing, style }: ReadingsProps) {
  return (
    <>
      {homograph && <p class="quiet">{say('ui.homograph')}</p>}
      {readings.map((reading, i) => (
        <div class="reading" key={i}>
          {readings.length > 1 && (
            <p class="reading-word">
              <MarkedWord word={word} reading={reading} />
            </p>
          )}
          <ReadingView reading={reading} missing={missing} style={style} />
        </div>
      ))}
    </>
  );
}

interface ReadingProps extends Pick<ReadingsProps, 'missing' | 'style'> {
  readonly reading: Reading;
}

function ReadingView({ reading, missing, style }: ReadingProps) {
  const { units, syllables, base, affixes, source, roots } = reading;
  const lacking = lackedUnits(reading, missing);
  const making = describeMaking(base, affixes);
  const odd = describeIrregular(units, style);
  const guess = source === 'dictionary' ? null : GUESSES[source];
  return (
    <>
      {units.length > 0 && (
        <ol class="units" dir="ltr" aria-label={say('ui.spellings')}>
          {units.map(({ letters, sound, pattern, affix }, i) => (
            <li
              key={i}
              class={`unit${affix ? ` unit-${affix}` : ''}${lacking.has(pattern) ? ' unit-missing' : ''}`}
              title={patternName(pattern)}
            >
              <span class="unit-letters" lang="en">
                {letters}
              </span>
              <span class="unit-sound">{sound === '-' ? say('ui.silent') : soundName(sound, style)}</span>
              {pattern !== 'irregular' && (
                <span class="unit-key" lang="en">
                  {keyWord(pattern)}
                </span>
              )}
            </li>
          ))}
        </ol>
      )}
      {syllables.length > 1 && (
        <p>
          <span class="quiet">{say('ui.syllables')}</span>{' '}
          {syllables.map(({ text, type }, i) => (
            <>
              {i > 0 && ' · '}
              <span class="syllable">
                <span class="spelt" lang="en">
                  {text}
                </span>{' '}
                <span class="quiet" title={syllableMeaning(type)}>
                  {syllableName(type)}
                </span>
              </span>
            </>
          ))}
        </p>
      )}
      {making && (
        <p>
          <span class="quiet">{say('ui.madeOf')}</span> <span class="spelt">{making}</span>
        </p>
      )}
      {roots && (
        <p>
          <span class="quiet">{say('ui.roots')}</span>{' '}
          <span class="spelt" lang="en">
            {roots.join(' + ')}
          </span>
        </p>
      )}
      {odd && (
        <p>
          <span class="quiet">{say('ui.oddly')}</span> {odd}
        </p>
      )}
      {guess && <p class="quiet">{say(guess)}</p>}
    </>
  );
}

/**
 * Returns the patterns that mark a unit as missing. For a finer row, such as -ing as in wing, the patterns of its units
 * are included.
 */
function lackedUnits({ fine }: Reading, missing: readonly PatternId[]): ReadonlySet<PatternId> {
  const covered = fine?.finer.filter(({ row }) => missing.includes(row)).flatMap(({ of }) => of) ?? [];
  return new Set([...missing, ...covered]);
}

const AFFIX_CHANGES = {
  none: null,
  double: 'patterns.doubleConsonant',
  'drop-e': 'patterns.dropE',
  'y-to-i': 'patterns.changeYToI',
  'f-to-v': 'patterns.changeFToV',
} as const satisfies Record<Affix['change'], TextId | null>;

/**
 * Describes a word's base and affixes with the spelling changes: `hope + ing, drop the e`. Returns an empty string for
 * a word without affixes.
 */
function describeMaking(base: string | null, affixes: readonly Affix[]): string {
  if (base === null) return '';
  const before = affixes.filter(({ kind }) => kind === 'prefix').map(({ text }) => text);
  const after = affixes.filter(({ kind }) => kind !== 'prefix').map(({ text }) => text);
  const changes = affixes.map(({ change }) => AFFIX_CHANGES[change]).filter((change) => change !== null);
  return [[...before.reverse(), base, ...after].join(' + '), ...changes.map((id) => say(id))].join(', ');
}

const SYLLABLE_NAMES = {
  closed: 'ui.closed',
  open: 'ui.open',
  vce: 'ui.vowelConsonantE',
  team: 'ui.vowelTeam',
  'r-controlled': 'ui.rControlled',
  'consonant-le': 'ui.consonantLe',
  other: 'ui.otherType',
} as const satisfies Record<SyllableType, TextId>;

const SYLLABLE_MEANINGS = {
  closed: 'terms.closedMeans',
  open: 'terms.openMeans',
  vce: 'terms.vceMeans',
  team: 'terms.teamMeans',
  'r-controlled': 'terms.rControlledMeans',
  'consonant-le': 'terms.consonantLeMeans',
  other: null,
} as const satisfies Record<SyllableType, TextId | null>;

/**
 * Returns the meaning of a syllable type, shown when the pointer rests on the type's name. Returns undefined if the
 * type has no explanation.
 */
function syllableMeaning(type: SyllableType): string | undefined {
  const id = SYLLABLE_MEANINGS[type];
  return id === null ? undefined : say(id);
}

/** Returns the technical name of a syllable type. */
function syllableName(type: SyllableType): string {
  return say(SYLLABLE_NAMES[type]);
}
