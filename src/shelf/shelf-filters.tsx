import type { ComponentChildren } from 'preact';
import type { IndexedText } from './shelf-index.ts';
import { listTags, type Wanted } from './sort-texts.ts';

interface ShelfFiltersProps {
  readonly texts: readonly IndexedText[];
  readonly wanted: Wanted;
  readonly onWanted: (wanted: Wanted) => void;
  /** How many of the texts are found. */
  readonly found: number;
  readonly children?: ComponentChildren;
}

/** Search and tags, and how many texts they find. */
export function ShelfFilters({ texts, wanted, onWanted, found, children }: ShelfFiltersProps) {
  const tags = listTags(texts);
  return (
    <search class="shelf-filters">
      <label class="shelf-search">
        <span class="quiet">Search</span>
        <input
          type="search"
          class="field"
          value={wanted.search}
          placeholder="title, tag, note, address"
          onInput={(event) => onWanted({ ...wanted, search: event.currentTarget.value })}
        />
      </label>
      {tags.length > 0 && (
        <label>
          <span class="quiet">Tag</span>
          <select
            class="field"
            value={wanted.tag ?? ''}
            onChange={(event) => onWanted({ ...wanted, tag: event.currentTarget.value || null })}
          >
            <option value="">any</option>
            {tags.map(({ tag, count }) => (
              <option key={tag} value={tag}>
                {tag} ({count})
              </option>
            ))}
          </select>
        </label>
      )}
      {children}
      <p class="quiet shelf-found" role="status">
        {found === texts.length
          ? `${sayTexts(found)} on the shelf`
          : `${found.toLocaleString('en')} of ${sayTexts(texts.length)} found`}
      </p>
    </search>
  );
}

function sayTexts(n: number): string {
  return n === 1 ? 'one text' : `${n.toLocaleString('en')} texts`;
}
