import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Fit } from '../analyze/index.ts';
import type { Group } from '../analyze/types.ts';
import { FitTable } from './fit-table.tsx';
import { ShelfFilters } from './shelf-filters.tsx';
import { isWanted, type Wanted } from './sort-texts.ts';
import type { Ranker } from './use-ranks.ts';
import type { ReadyShelf } from './use-shelf.ts';

interface GroupsViewProps {
  readonly shelf: ReadyShelf;
  readonly rank: Ranker;
  readonly mark: number;
  readonly groups: Readonly<Record<string, Group>>;
  readonly stepOf: (group: Group) => number;
  readonly wanted: Wanted;
  readonly onWanted: (wanted: Wanted) => void;
}

/** So many groups are in the table until others are ticked. */
const AT_FIRST = 6;

/** Which text is for whom: the texts of the shelf by groups. */
export function GroupsView({ shelf, rank, mark, groups, stepOf, wanted, onWanted }: GroupsViewProps) {
  const [printing, setPrinting] = useState(false);
  const [ticked, setTicked] = useState<readonly string[] | null>(null);
  const ids = Object.keys(groups).filter((id, i) => (ticked ? ticked.includes(id) : i < AT_FIRST));
  const texts = useMemo(() => shelf.texts.filter((text) => isWanted(text, wanted)), [shelf.texts, wanted]);
  const fits = useMemo(
    () => new Map<string, readonly Fit[]>(ids.map((id) => [id, rank(texts, groups[id]!, mark)])),
    [texts, ids.join(' '), rank, groups, mark],
  );
  useEffect(() => {
    if (!printing) return;
    print();
    setPrinting(false);
  }, [printing]);
  return (
    <div class="sheet">
      <fieldset class="shelf-ticks" data-screen>
        <legend class="quiet">Groups in the table</legend>
        {Object.entries(groups).map(([id, { name }]) => (
          <label key={id} class="tick">
            <input
              type="checkbox"
              checked={ids.includes(id)}
              onChange={({ currentTarget: { checked } }) =>
                setTicked(checked ? [...ids, id] : ids.filter((other) => other !== id))
              }
            />{' '}
            {name}
          </label>
        ))}
      </fieldset>
      <div data-screen>
        <ShelfFilters texts={shelf.texts} wanted={wanted} onWanted={onWanted} found={texts.length}>
          <button type="button" class="plain" onClick={() => setPrinting(true)}>
            Print the table
          </button>
        </ShelfFilters>
      </div>
      {texts.length > 0 && ids.length > 0 && (
        <FitTable
          caption={`Reach of each text in percent of its words, and when it reads (${mark}% or more)`}
          texts={texts}
          whole={printing}
          columns={ids.map((id) => ({
            id,
            group: groups[id]!,
            step: stepOf(groups[id]!),
            fits: fits.get(id)!,
          }))}
        />
      )}
      {shelf.texts.length === 0 && (
        <p class="note">
          The shelf is empty. “Put on the shelf” in the side panel, or “Add many”, brings texts here.
        </p>
      )}
    </div>
  );
}
