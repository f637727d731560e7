import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Fit } from '../../analyze/index.ts';
import type { Group } from '../../analyze/types.ts';
import { keepColumns, loadColumns, watchColumns } from '../../host/store/shelf-columns.ts';
import { useWatched } from '../../ui/use-watched.ts';
import { say } from '../../wording/say.ts';
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

/** The number of groups in the table until the teacher ticks other groups. */
const AT_FIRST = 6;

/** Shows which text suits which group: the texts of the shelf by groups. */
export function GroupsView({ shelf, rank, mark, groups, stepOf, wanted, onWanted }: GroupsViewProps) {
  const [printing, setPrinting] = useState(false);
  const [ticked, setTicked] = useState<readonly string[] | null>(null);
  const order = useWatched(loadColumns, watchColumns) ?? [];
  const all = inOrder(Object.keys(groups), order);
  const ids = all.filter((id, i) => (ticked ? ticked.includes(id) : i < AT_FIRST));
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
        <legend class="quiet">{say('shelf.groupsInTable')}</legend>
        {all.map((id) => (
          <label key={id} class="tick">
            <input
              type="checkbox"
              checked={ids.includes(id)}
              onChange={({ currentTarget: { checked } }) =>
                setTicked(checked ? [...ids, id] : ids.filter((other) => other !== id))
              }
            />{' '}
            {groups[id]!.name}
          </label>
        ))}
      </fieldset>
      <div data-screen>
        <ShelfFilters texts={shelf.texts} wanted={wanted} onWanted={onWanted} found={texts.length}>
          <button type="button" class="plain" onClick={() => setPrinting(true)}>
            {say('shelf.printTable')}
          </button>
        </ShelfFilters>
      </div>
      {texts.length > 0 && ids.length > 0 && (
        <FitTable
          caption={say('shelf.groupsCaption', { mark })}
          texts={texts}
          whole={printing}
          onMove={(from, to) => {
            const others = ids.filter((_, i) => i !== from);
            const shown = [...others.slice(0, to), ids[from]!, ...others.slice(to)];
            void keepColumns([...shown, ...all.filter((id) => !ids.includes(id))]);
          }}
          columns={ids.map((id) => ({
            id,
            group: groups[id]!,
            step: stepOf(groups[id]!),
            fits: fits.get(id)!,
          }))}
        />
      )}
      {shelf.texts.length === 0 && <p class="note">{say('shelf.emptyTable')}</p>}
    </div>
  );
}

/** Returns the ids in the given order. Ids that are not in `order` come last and keep their order. */
function inOrder(ids: readonly string[], order: readonly string[]): readonly string[] {
  const placeOf = (id: string): number => (order.includes(id) ? order.indexOf(id) : order.length);
  return ids.toSorted((a, b) => placeOf(a) - placeOf(b));
}
