import { useState } from 'preact/hooks';

const SHOWN = 8;

/** Words that lead to their place in the page; pressed again, to the next place. */
export function WordButtons({ words, onWord }: { words: readonly string[]; onWord: (word: string) => void }) {
  const [all, setAll] = useState(false);
  const shown = all ? words : words.slice(0, SHOWN);
  return (
    <p class="words">
      {shown.map((word) => (
        <button key={word} type="button" class="word" onClick={() => onWord(word)}>
          {word}
        </button>
      ))}
      {words.length > SHOWN && (
        <button type="button" class="plain" aria-expanded={all} onClick={() => setAll(!all)}>
          {all ? 'fewer' : `${words.length - SHOWN} more`}
        </button>
      )}
    </p>
  );
}
