import { useEffect, useState } from 'preact/hooks';
import { type Judge, soundStyleOf } from '../../analyze/index.ts';
import type { CountsAs, WordAnalysis } from '../../analyze/types.ts';
import { loadSwapper } from '../../host/data/load-swapper.ts';
import { reachFor } from '../../swap/index.ts';
import { CountsAsChoice } from '../../ui/counts-as.tsx';
import '../../ui/counts-as.css';
import { MarkedWord, ReadingsView } from '../../ui/reading-view.tsx';
import '../../ui/reading-view.css';
import { findSentences } from '../../passage/find-sentences.ts';
import { patternNames } from '../../ui/pattern-names.ts';
import { standingSentence } from '../../ui/standing-sentence.ts';
import { say } from '../../wording/say.ts';
import { glossOf } from './gloss-of.ts';
import type { PassageWord, TextEdit } from './passage-editor.ts';

interface WordViewProps {
  readonly word: PassageWord;
  readonly analysis: WordAnalysis;
  readonly judge: Judge;
  readonly isStoryWord: boolean;
  /** How the word counts for the group. */
  readonly counts: CountsAs;
  readonly onCounts: (as: CountsAs, says: string) => void;
  /** Replaces the word with a swap everywhere. */
  readonly onEverywhere: (text: string) => void;
  /** Makes the edits of a swap in this place: the word, and the 'a' or 'an' before it. */
  readonly onEdit: (edits: readonly TextEdit[]) => void;
  /** Teaches the word for this passage, with a first meaning. */
  readonly onStoryWord: (meaning: string) => void;
}

/** Shows the word at the cursor: its standing for the group, and the words that can replace it. */
export function WordView({
  word,
  analysis,
  judge,
  isStoryWord,
  counts,
  onCounts,
  onEverywhere,
  onEdit,
  onStoryWord,
}: WordViewProps) {
  const verdict = judge(word.key);
  const { swaps, gloss } = useSwaps(word, judge);
  const isHard = verdict.standing === 'beyond' || verdict.standing === 'unsure';
  const [everywhere, setEverywhere] = useState(false);
  const [reading] = analysis.readings;
  return (
    <section class="desk-word" aria-label={say('desk.theWord', { word: word.text })}>
      <p class="card-word" lang="en">
        {reading && analysis.readings.length === 1 ? (
          <MarkedWord word={word.text} reading={reading} />
        ) : (
          word.text
        )}
      </p>
      <p class={`standing standing-${verdict.standing}`}>
        {isStoryWord ? say('desk.isStoryWord') : standingSentence(verdict)}
      </p>
      {verdict.missing.length > 0 && (
        <p>
          <span class="quiet">{say('desk.stillNeeded')}</span> {patternNames(verdict.missing)}
        </p>
      )}
      {isHard && !isStoryWord && (
        <>
          {swaps?.length !== 0 && <h3>{say('desk.swaps')}</h3>}
          {swaps === null ? (
            <p class="quiet">{say('desk.lookingForSwaps')}</p>
          ) : swaps.length === 0 ? (
            <p class="quiet">{say('desk.noSwaps')}</p>
          ) : (
            <p class="words">
              {swaps.map(({ text, reads, article, span, replaced }) => (
                <button
                  key={`${replaced} ${text}`}
                  type="button"
                  class={reads ? 'swap' : 'swap swap-beyond'}
                  title={say(reads ? 'desk.groupReadsIt' : 'desk.groupDoesNotReadIt')}
                  onClick={() => {
                    if (everywhere && !span) return onEverywhere(text);
                    const place = span ?? { from: word.from, to: word.to };
                    onEdit([...(article ? [article] : []), { ...place, text }]);
                  }}
                >
                  {replaced === null ? (
                    <span lang="en">{text}</span>
                  ) : text.trim() === '' ? (
                    say('desk.takeOut', { word: replaced })
                  ) : (
                    say('desk.sayFor', { word: replaced, swap: text, count: 1 })
                  )}
                </button>
              ))}
            </p>
          )}
          <p class="row">
            {swaps !== null && swaps.length > 0 && (
              <label class="tick">
                <input
                  type="checkbox"
                  checked={everywhere}
                  onChange={(event) => setEverywhere(event.currentTarget.checked)}
                />{' '}
                {say('desk.everywhere')}
              </label>
            )}
            <button type="button" class="plain" onClick={() => onStoryWord(gloss)}>
              {say('desk.makeStoryWord')}
            </button>
          </p>
        </>
      )}
      <CountsAsChoice word={word.text} counts={counts} onCounts={onCounts} />
      <details>
        <summary>{say('desk.spellingsAndSounds')}</summary>
        <ReadingsView
          word={word.text}
          analysis={analysis}
          missing={verdict.missing}
          style={soundStyleOf(judge.group)}
        />
      </details>
    </section>
  );
}

const SHOWN = 5;

interface FoundSwaps {
  /** The swaps found; null during the search. */
  readonly swaps: readonly FittedSwap[] | null;
  /** A short meaning of the word. */
  readonly gloss: string;
}

const LOOKING: FoundSwaps = { swaps: null, gloss: '' };

interface FittedSwap {
  readonly text: string;
  readonly reads: boolean;
  /** The article 'a' or 'an' before the word, by its place in the passage, when the article has to change too. */
  readonly article: TextEdit | undefined;
  /**
   * The text that the swap replaces, if that is more than the word. `span` is the place of the text in the passage, and
   * `replaced` is the text in words.
   */
  readonly span: { readonly from: number; readonly to: number } | undefined;
  readonly replaced: string | null;
}

/** Finds swaps for a word in its sentence. The list is null during the search, and empty when there are no swaps. */
function useSwaps(word: PassageWord, judge: Judge): FoundSwaps {
  const [found, setFound] = useState<FoundSwaps>(LOOKING);
  useEffect(() => {
    let current = true;
    setFound(LOOKING);
    loadSwapper().then(
      (swapper) => {
        const sentence = findSentences(word.line).find(
          ({ start, end }) => start <= word.start && word.end <= end,
        );
        const { start, end } = sentence ?? { start: 0, end: word.line.length };
        const found = swapper.findSwaps(word.line.slice(start, end), word.start - start, word.end - start, {
          reach: reachFor(judge),
          phrases: true,
        });
        const lineStart = word.from - word.start;
        const fitted = found.swaps
          .filter(({ reads }, i) => i < found.best || (found.best > 0 && reads))
          .slice(0, SHOWN)
          .map(({ text, reads, article, span }) => ({
            text,
            reads,
            span: span && {
              from: lineStart + start + span.start,
              to: lineStart + start + span.end,
            },
            replaced: span ? word.line.slice(start + span.start, start + span.end).trim() : null,
            article: article && {
              from: lineStart + start + article.start,
              to: lineStart + start + article.end,
              text: article.text,
            },
          }));
        if (current) setFound({ swaps: fitted, gloss: glossOf(found.swaps) });
      },
      () => current && setFound({ swaps: [], gloss: '' }),
    );
    return () => {
      current = false;
    };
  }, [word, judge]);
  return found;
}
