import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { say, sayWith } from '../../wording/say.ts';
import './chapter-choice.css';
import type { OpenedBook } from './opened-file.ts';

interface ChapterChoiceProps {
  readonly book: OpenedBook;
  readonly onTake: (chosen: ReadonlySet<number>) => void;
  readonly onLeave: () => void;
}

/** A choice of the chapters of a book to add to the desk. The first chapter of the story is ticked. */
export function ChapterChoice({ book, onTake, onLeave }: ChapterChoiceProps) {
  const [chosen, setChosen] = useState<ReadonlySet<number>>(() => new Set([book.first]));
  const title = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => title.current?.focus(), []);
  const words = book.chapters.reduce((sum, chapter, n) => sum + (chosen.has(n) ? chapter.words : 0), 0);
  return (
    <section class="part" aria-labelledby="chapters-title">
      <h2 id="chapters-title" ref={title} tabIndex={-1}>
        {sayWith('files.chaptersOf', { book: <span lang="en">{book.title}</span> })}
      </h2>
      <ul class="chapters">
        {book.chapters.map((chapter, n) => (
          <li key={n}>
            <label>
              <input
                type="checkbox"
                checked={chosen.has(n)}
                onChange={({ currentTarget: { checked } }) => {
                  const next = new Set(chosen);
                  if (checked) next.add(n);
                  else next.delete(n);
                  setChosen(next);
                }}
              />
              <span lang="en">{chapter.title}</span>
              <span class="quiet">{say('files.words', { count: chapter.words })}</span>
            </label>
          </li>
        ))}
      </ul>
      <div class="row">
        <button type="button" class="action" disabled={chosen.size === 0} onClick={() => onTake(chosen)}>
          {say('files.putOnTheDesk', { count: words })}
        </button>
        <button type="button" class="plain" onClick={onLeave}>
          {say('files.openAnother')}
        </button>
      </div>
    </section>
  );
}
