import { useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Fit } from '../../analyze/index.ts';
import type { Group } from '../../analyze/types.ts';
import { useRowDrag } from '../../ui/use-row-drag.ts';
import { say, spokenLanguage } from '../../wording/say.ts';
import { describeFitShort, sayReach } from './describe-fit.ts';
import type { IndexedText } from './shelf-index.ts';
import { addressOf } from './use-route.ts';
import './fit-table.css';

/** A group with the fit of every text of the table, in the order of the texts. */
export interface FitColumn {
  readonly id: string;
  readonly group: Group;
  readonly step: number;
  readonly fits: readonly Fit[];
}

interface FitTableProps {
  readonly caption: string;
  readonly texts: readonly IndexedText[];
  readonly columns: readonly FitColumn[];
  /** Whether the titles link to the texts. False for texts that were not added to the shelf. */
  readonly links?: boolean;
  /** Whether all rows are shown at once, for printing. */
  readonly whole?: boolean;
  /** Moves a column to the place of another. Left out if the columns cannot be moved. */
  readonly onMove?: (from: number, to: number) => void;
}

/** The column by which the rows are sorted: the title, the words, or the fit for a group, given by its id. */
interface Sorting {
  readonly by: 'title' | 'words' | { readonly id: string };
  readonly down: boolean;
}

/** The number of rows shown at a time. */
const PAGE = 50;

const letters = new Intl.Collator('en', { numeric: true });

/**
 * A table of texts by groups that can be sorted by any column. The columns are moved by dragging or by Alt and an arrow
 * key. A table wider than the window scrolls in its own region.
 */
export function FitTable({ caption, texts, columns, links = true, whole = false, onMove }: FitTableProps) {
  const [sorting, setSorting] = useState<Sorting>({ by: { id: columns[0]!.id }, down: true });
  const [shown, setShown] = useState(PAGE);
  const first = columns[0]!;
  const rows = useMemo(
    () => sortRows(texts, columns, sorting),
    [texts, sorting, ...columns.map(({ fits }) => fits)],
  );
  const isBy = (by: Sorting['by']): boolean =>
    typeof by === 'string' ? sorting.by === by : typeof sorting.by !== 'string' && sorting.by.id === by.id;
  const [says, setSays] = useState('');
  const table = useRef<HTMLTableElement>(null);
  const moved = useRef<number | null>(null);
  // A column head that was moved by keyboard keeps the keyboard focus.
  useLayoutEffect(() => {
    if (moved.current !== null)
      table.current?.querySelectorAll<HTMLElement>('.shelf-sort')[moved.current + 2]?.focus();
    moved.current = null;
  }, [columns]);
  const drag = useRowDrag(
    (from, to) => {
      if (!onMove || to < 0 || to >= columns.length || to === from) return;
      moved.current = to;
      setSays(say('shelf.columnMoved', { group: columns[from]!.group.name, place: to + 1 }));
      onMove(from, to);
    },
    ['ArrowLeft', 'ArrowRight'],
  );
  const head = (by: Sorting['by'], name: string, hint?: string, place?: number) => (
    <th
      key={typeof by === 'string' ? by : `group ${by.id}`}
      scope="col"
      aria-sort={isBy(by) ? (sorting.down ? 'descending' : 'ascending') : undefined}
      {...(onMove && place !== undefined && { class: drag.dropClass(place), ...drag.rowEvents(place) })}
    >
      {onMove && place !== undefined && (
        <span
          class="shelf-handle"
          data-screen
          draggable
          aria-hidden="true"
          title={say('shelf.moveColumn')}
          {...drag.handleEvents(place, name)}
        />
      )}
      <button
        type="button"
        class="shelf-sort"
        title={onMove && place !== undefined ? say('shelf.moveColumn') : undefined}
        onClick={() => setSorting({ by, down: isBy(by) ? !sorting.down : by !== 'title' })}
      >
        {name}
        <span aria-hidden="true">{isBy(by) ? (sorting.down ? ' ↓' : ' ↑') : ''}</span>
      </button>
      {hint && <span class="quiet">{hint}</span>}
    </th>
  );
  return (
    <>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: wider than a narrow window, it is scrolled by keyboard too */}
      <section class="shelf-scroll scrolls-aside" aria-label={say('shelf.textsByGroups')} tabIndex={0}>
        <table class="shelf-table" ref={table}>
          <caption>
            <span>{caption}</span>
          </caption>
          <thead>
            <tr>
              {head('title', say('shelf.textColumn'))}
              {head('words', say('report.words'))}
              {columns.map(({ id, group, step }, i) =>
                head({ id }, group.name, say('report.atStep', { step }), i),
              )}
            </tr>
          </thead>
          <tbody>
            {(whole ? rows : rows.slice(0, shown)).map((i) => {
              const text = texts[i]!;
              return (
                <tr key={text.id}>
                  <th scope="row">
                    {links ? (
                      <a href={addressOf({ view: 'text', id: text.id })}>
                        {text.title || say('shelf.untitled')}
                      </a>
                    ) : (
                      text.title || say('shelf.untitled')
                    )}
                  </th>
                  <td>{first.fits[i]!.running.toLocaleString(spokenLanguage())}</td>
                  {columns.map(({ id, fits }) => (
                    <td key={id} class={fits[i]!.now ? 'shelf-cell-now' : undefined}>
                      {sayReach(fits[i]!.reach)}{' '}
                      <span class={fits[i]!.now ? 'unseen' : 'quiet'}>{describeFitShort(fits[i]!)}</span>
                    </td>
                  ))}
                </tr>
              );
            })}
          </tbody>
        </table>
      </section>
      <p class="unseen" role="status">
        {says}
      </p>
      {rows.length > shown && (
        <button type="button" class="plain" data-screen onClick={() => setShown(shown + PAGE)}>
          {say('ui.showMore', { count: Math.min(PAGE, rows.length - shown) })}
        </button>
      )}
    </>
  );
}

/** Returns the indexes of the texts in the order of the rows. The best fit counts as the greatest. */
function sortRows(
  texts: readonly IndexedText[],
  columns: readonly FitColumn[],
  { by, down }: Sorting,
): readonly number[] {
  const fits =
    typeof by === 'string' ? columns[0]!.fits : (columns.find(({ id }) => id === by.id) ?? columns[0]!).fits;
  const compare = (a: number, b: number): number => {
    if (by === 'title') return letters.compare(texts[a]!.title, texts[b]!.title);
    if (by === 'words') return fits[a]!.running - fits[b]!.running;
    return compareFits(fits[a]!, fits[b]!);
  };
  return texts.map((_, i) => i).sort((a, b) => (down ? compare(b, a) : compare(a, b)) || a - b);
}

function compareFits(a: Fit, b: Fit): number {
  if (a.now !== b.now) return a.now ? 1 : -1;
  const ahead = a.now ? 0 : (b.step ?? 10_000) - (a.step ?? 10_000);
  return ahead || a.reach - b.reach;
}
