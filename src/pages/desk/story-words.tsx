import type { StoryWord } from '../../passage/kept/passage.ts';
import { say } from '../../wording/say.ts';

interface StoryWordsProps {
  readonly words: readonly StoryWord[];
  readonly onChange: (words: readonly StoryWord[]) => void;
}

/**
 * Lists the words taught as wholes for this passage, each with a short meaning. The words are printed above the
 * passage.
 */
export function StoryWords({ words, onChange }: StoryWordsProps) {
  if (words.length === 0) return null;
  return (
    <section aria-labelledby="story-words-title">
      <h2 id="story-words-title">{say('desk.storyWords')}</h2>
      <p class="quiet">{say('desk.aboutStoryWords')}</p>
      <ul class="story-words">
        {words.map(({ word, meaning }) => (
          <li key={word}>
            <label for={`meaning-${word}`} class="story-word" lang="en">
              {word}
            </label>
            <input
              id={`meaning-${word}`}
              type="text"
              class="field"
              placeholder={say('desk.whatItMeans')}
              lang="en"
              value={meaning}
              onInput={(event) =>
                onChange(
                  words.map((one) =>
                    one.word === word ? { ...one, meaning: event.currentTarget.value } : one,
                  ),
                )
              }
            />
            <button
              type="button"
              class="plain"
              aria-label={say('desk.takeWordOut', { word })}
              onClick={() => onChange(words.filter((one) => one.word !== word))}
            >
              ×
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
