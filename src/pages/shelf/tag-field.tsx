import { useId, useRef } from 'preact/hooks';
import { typedStore } from '../../host/store/typed-store.ts';
import { FoundAgain } from '../../ui/found-again.tsx';
import { useTyped } from '../../ui/use-typed.ts';
import { say } from '../../wording/say.ts';
import { joinTags } from './add-to-shelf.ts';

interface TagFieldProps {
  /** The owner of the tags. Typed text is stored under this name. */
  readonly owner: string;
  readonly label: string;
  readonly tags: readonly string[];
  /** Tags used on the shelf, to choose from. */
  readonly known: readonly string[];
  /** Returns a promise if saving takes a moment. */
  readonly onAdd: (tags: readonly string[]) => unknown;
  readonly onRemove: (tag: string) => void;
}

/** Shows the tags of a text. Each tag can be removed. New tags can be added, several at a time with commas. */
export function TagField({ owner, label, tags, known, onAdd, onRemove }: TagFieldProps) {
  const id = useId();
  const { typed, isFound, type, done } = useTyped(typedStore, `tags of ${owner}`);
  const field = useRef<HTMLInputElement>(null);
  const add = (): void => {
    const more = joinTags([], (typed ?? '').split(','));
    done(more.length > 0 ? onAdd(more) : undefined);
  };
  return (
    <div class="shelf-tag-field">
      <label for={id} class="quiet">
        {label}
      </label>
      {tags.length > 0 && (
        <ul class="shelf-tags">
          {tags.map((tag) => (
            <li key={tag} class="shelf-tag">
              {tag}{' '}
              <button
                type="button"
                class="shelf-untag"
                aria-label={say('shelf.untag', { tag })}
                onClick={() => {
                  onRemove(tag);
                  field.current?.focus();
                }}
              >
                ×
              </button>
            </li>
          ))}
        </ul>
      )}
      <form
        class="row"
        onSubmit={(event) => {
          event.preventDefault();
          add();
        }}
      >
        <input
          id={id}
          ref={field}
          type="text"
          class="field field-short"
          list={`${id}-known`}
          value={typed ?? ''}
          placeholder={say('shelf.tagsShown')}
          onInput={(event) => type(event.currentTarget.value)}
          onBlur={add}
        />
        <datalist id={`${id}-known`}>
          {known.map((tag) => (
            <option key={tag} value={tag} />
          ))}
        </datalist>
        <button type="submit" class="plain">
          {say('shelf.add')}
        </button>
      </form>
      {isFound && <FoundAgain onKeep={add} onForget={() => done()} />}
    </div>
  );
}
