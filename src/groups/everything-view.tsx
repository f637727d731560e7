import { useEffect, useRef } from 'preact/hooks';
import { type EverythingCounts, packEverything } from '../host/everything-store.ts';
import { today } from '../host/move-group.ts';
import { saveFile } from '../ui/save-file.ts';

/** Saves all that is kept in this browser in one file. */
export function SaveEverything() {
  return (
    <section class="part" aria-labelledby="everything-title">
      <h2 id="everything-title">Save everything</h2>
      <p class="quiet">
        All that Wordreach keeps in this browser in one file, to bring it back one day, here or elsewhere:
        groups, sequences, passages, lessons and the shelf. The names of pupils are in it too, so it is not
        for sharing.
      </p>
      <button
        type="button"
        class="plain"
        onClick={async () => saveFile(`wordreach-everything-${today()}.jsonl`, await packEverything())}
      >
        Save everything
      </button>
    </section>
  );
}

interface RestoreQuestionProps {
  readonly counts: EverythingCounts;
  readonly onReplace: () => void;
  readonly onKeep: () => void;
}

/** Asks before everything here gives way to what a file holds; the focus is on keeping it. */
export function RestoreQuestion({ counts, onReplace, onKeep }: RestoreQuestionProps) {
  const keep = useRef<HTMLButtonElement>(null);
  useEffect(() => keep.current?.focus(), []);
  return (
    <div class="note" role="alert">
      <p>
        This file holds everything of a browser: {describeCounts(counts)}. All that is here now is replaced by
        it, and that cannot be undone.
      </p>
      <p class="row">
        <button type="button" class="plain" onClick={onReplace}>
          Replace all that is here
        </button>
        <button ref={keep} type="button" class="plain" onClick={onKeep}>
          Keep what is here
        </button>
      </p>
    </div>
  );
}

function describeCounts({ groups, sequences, passages, lessons, texts }: EverythingCounts): string {
  const parts = [
    name(groups, 'group'),
    name(sequences, 'sequence of your own', 'sequences of your own'),
    name(passages, 'passage'),
    name(lessons, 'lesson'),
    name(texts, 'text on the shelf', 'texts on the shelf'),
  ].filter((part) => part !== null);
  return parts.length === 0 ? 'nothing but the starters' : new Intl.ListFormat('en-GB').format(parts);
}

function name(n: number, one: string, many = `${one}s`): string | null {
  return n === 0 ? null : `${n.toLocaleString('en')} ${n === 1 ? one : many}`;
}
