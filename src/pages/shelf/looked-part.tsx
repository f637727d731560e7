import { useMemo, useState } from 'preact/hooks';
import type { Group } from '../../analyze/types.ts';
import { noteEdit } from '../../ui/edit-log.ts';
import { say } from '../../wording/say.ts';
import { addToShelf } from './add-to-shelf.ts';
import { FitTable } from './fit-table.tsx';
import { indexText } from './shelf-index.ts';
import type { Intake } from './use-intake.ts';
import type { Ranker } from './use-ranks.ts';
import type { ReadyShelf } from './use-shelf.ts';

interface LookedPartProps {
  readonly shelf: ReadyShelf;
  readonly intake: Intake;
  readonly rank: Ranker;
  readonly mark: number;
  readonly groups: Readonly<Record<string, Group>>;
  readonly stepOf: (group: Group) => number;
  readonly tags: readonly string[];
}

/**
 * Shows the texts that were not added to the shelf, in a table for all groups. From the table they can still be put on
 * the shelf.
 */
export function LookedPart({ shelf, intake, rank, mark, groups, stepOf, tags }: LookedPartProps) {
  const [says, setSays] = useState<string | null>(null);
  const looked = useMemo(
    () =>
      intake.items.flatMap(({ id, state }) =>
        state.kind === 'done' ? state.result.looked.map((text, i) => ({ text, id: `${id}-${i}` })) : [],
      ),
    [intake.items],
  );
  const texts = useMemo(
    () =>
      looked.map(({ text: { text, ...vetted }, id }) =>
        indexText(
          { ...vetted, id, shelved: 0, tags: [], notes: '', isKept: text !== null },
          shelf.index.numbers,
        ),
      ),
    [looked, shelf.index],
  );
  if (texts.length === 0) return null;
  const columns = Object.entries(groups).map(([id, group]) => ({
    id,
    group,
    step: stepOf(group),
    fits: rank(texts, group, mark),
  }));
  return (
    <section class="part" aria-labelledby="looked-title">
      <h2 id="looked-title">{say('shelf.lookedAt')}</h2>
      <FitTable
        caption={say('shelf.lookedCaption', { mark })}
        texts={texts}
        columns={columns}
        links={false}
      />
      <p class="row">
        <button
          type="button"
          class="action"
          onClick={async () => {
            const undo: (() => Promise<void>)[] = [];
            for (const { text } of looked)
              undo.push((await addToShelf(text, tags)).undo ?? (async () => undefined));
            setSays(say('shelf.theyAreThere'));
            noteEdit(say('shelf.added', { count: looked.length }), async () => {
              for (const each of undo) await each();
              setSays(null);
            });
          }}
        >
          {say('shelf.putThese', { count: looked.length })}
        </button>
        <span role="status">{says}</span>
      </p>
    </section>
  );
}
