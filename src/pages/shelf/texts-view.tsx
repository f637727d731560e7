import { Fragment } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Group, Sequence } from '../../analyze/types.ts';
import { HIGHEST_MARK, keepMark, LOWEST_MARK } from '../../host/store/shelf-mark.ts';
import { stepTitle } from '../../ui/step-title.ts';
import { say, sayWith, type TextId } from '../../wording/say.ts';
import { FirstShelfPart } from './first-shelf-part.tsx';
import { ShelfFilters } from './shelf-filters.tsx';
import { type Band, bandOf, isWanted, type Order, SOON, sortTexts, type Wanted } from './sort-texts.ts';
import { TextRow } from './text-row.tsx';
import type { Ranker } from './use-ranks.ts';
import type { ReadyShelf } from './use-shelf.ts';

/** The number of rows shown at a time. */
const PAGE = 50;

const BANDS = {
  now: 'shelf.bandNow',
  soon: 'shelf.bandSoon',
  later: 'shelf.bandLater',
} as const satisfies Record<Band, TextId>;

interface TextsViewProps {
  readonly shelf: ReadyShelf;
  readonly rank: Ranker;
  readonly mark: number;
  readonly groups: Readonly<Record<string, Group>>;
  readonly groupId: string;
  readonly onGroup: (id: string) => void;
  /** The group's step within its sequence. */
  readonly step: number;
  /** Null if the group follows no sequence. */
  readonly sequence: Sequence | null;
  readonly wanted: Wanted;
  readonly onWanted: (wanted: Wanted) => void;
  readonly order: Order;
  readonly onOrder: (order: Order) => void;
}

/** Shows the texts of the shelf, sorted by their fit for a group. */
export function TextsView(props: TextsViewProps) {
  const { shelf, rank, mark, groups, groupId, step, sequence, wanted, order } = props;
  const group = groups[groupId]!;
  const [shown, setShown] = useState(PAGE);
  useEffect(() => setShown(PAGE), [groupId, wanted, order]);
  const sorted = useMemo(() => {
    const fits = rank(shelf.texts, group, mark);
    const ranked = shelf.texts.map((text, i) => ({ text, fit: fits[i]! }));
    return sortTexts(
      ranked.filter(({ text }) => isWanted(text, wanted)),
      order,
    );
  }, [shelf.texts, rank, group, mark, wanted, order]);
  const counts = { now: 0, soon: 0, later: 0 };
  for (const { fit } of sorted) counts[bandOf(fit, step)]++;
  const hasBands = order === 'fit';
  return (
    <div class="sheet">
      <div class="shelf-bar">
        <label>
          <span class="quiet">{say('report.for')}</span>
          <select
            class="field"
            value={groupId}
            onChange={(event) => props.onGroup(event.currentTarget.value)}
          >
            {Object.entries(groups).map(([id, { name }]) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
        </label>
        <label>
          <span class="quiet">{say('shelf.readsFrom')}</span>
          <span>
            <input
              type="number"
              class="field shelf-mark"
              min={LOWEST_MARK}
              max={HIGHEST_MARK}
              value={mark}
              aria-describedby="mark-hint"
              onChange={(event) => {
                const { valueAsNumber, validity } = event.currentTarget;
                if (validity.valid && Number.isInteger(valueAsNumber)) void keepMark(valueAsNumber);
                else event.currentTarget.value = String(mark);
              }}
            />{' '}
            %
          </span>
        </label>
        <label>
          <span class="quiet">{say('shelf.order')}</span>
          <select
            class="field"
            value={order}
            onChange={(event) => props.onOrder(event.currentTarget.value as Order)}
          >
            <option value="fit">{say('shelf.bestFit')}</option>
            <option value="practice">{say('shelf.mostOpened')}</option>
            <option value="newest">{say('shelf.newest')}</option>
            <option value="title">{say('shelf.byTitle')}</option>
          </select>
        </label>
      </div>
      <p class="quiet" id="mark-hint">
        {describeStep(step, sequence)} {say('shelf.markHint')}
      </p>
      <ShelfFilters texts={shelf.texts} wanted={wanted} onWanted={props.onWanted} found={sorted.length} />
      {shelf.texts.length === 0 && (
        <div class="note">
          <p>{say('shelf.empty')}</p>
          <p>
            {sayWith('shelf.emptyHint', {
              link: (
                <a class="plain" href="#add">
                  {say('shelf.emptyLink')}
                </a>
              ),
            })}
          </p>
        </div>
      )}
      <FirstShelfPart texts={shelf.texts} />
      {sorted.length > 0 && (
        <ol class="shelf-list">
          {sorted.slice(0, shown).map(({ text, fit }, i) => {
            const band = bandOf(fit, step);
            const isFirst = hasBands && (i === 0 || bandOf(sorted[i - 1]!.fit, step) !== band);
            return (
              <Fragment key={text.id}>
                {isFirst && (
                  <li class="shelf-band">
                    <h2>
                      {band === 'soon' ? say(BANDS.soon, { count: SOON }) : say(BANDS[band])}{' '}
                      <span class="quiet">{say('shelf.countTexts', { count: counts[band] })}</span>
                    </h2>
                  </li>
                )}
                <TextRow
                  text={text}
                  fit={fit}
                  step={step}
                  isUnderNow={hasBands && fit.now}
                  isDated={order === 'newest'}
                />
              </Fragment>
            );
          })}
        </ol>
      )}
      {sorted.length > shown && (
        <button type="button" class="plain" onClick={() => setShown(shown + PAGE)}>
          {say('ui.showMore', { count: Math.min(PAGE, sorted.length - shown) })}
        </button>
      )}
    </div>
  );
}

function describeStep(step: number, sequence: Sequence | null): string {
  if (sequence === null) return say('shelf.noSteps');
  return say('shelf.atStep', { step, steps: sequence.steps.length, title: stepTitle(sequence, step) });
}
