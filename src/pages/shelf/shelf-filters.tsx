import type { ComponentChildren } from 'preact';
import { say } from '../../wording/say.ts';
import type { IndexedText } from './shelf-index.ts';
import { listTags, type Wanted } from './sort-texts.ts';

interface ShelfFiltersProps {
  readonly texts: readonly IndexedText[];
  readonly wanted: Wanted;
  readonly onWanted: (wanted: Wanted) => void;
  /** The number of texts found. */
  readonly found: number;
  readonly children?: ComponentChildren;
}

/** Shows the search field, the tags, and the number of texts they find. */
export function ShelfFilters({ texts, wanted, onWanted, found, children }: ShelfFiltersProps) {
  const tags = listTags(texts);
  return (
    <search class="shelf-filters">
      <label class="shelf-search">
        <span class="quiet">{say('shelf.search')}</span>
        <input
          type="search"
          class="field"
          value={wanted.search}
          placeholder={say('shelf.searchHint')}
          onInput={(event) => onWanted({ ...wanted, search: event.currentTarget.value })}
        />
      </label>
      {tags.length > 0 && (
        <label>
          <span class="quiet">{say('shelf.tag')}</span>
          <select
            class="field"
            value={wanted.tag ?? ''}
            onChange={(event) => onWanted({ ...wanted, tag: event.currentTarget.value || null })}
          >
            <option value="">{say('shelf.anyTag')}</option>
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
          ? say('shelf.onShelf', { count: found })
          : say('shelf.found', { found, count: texts.length })}
      </p>
    </search>
  );
}
