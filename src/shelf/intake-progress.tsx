import type { IntakeItem } from './intake-queue.ts';
import type { Intake, IntakeResult } from './use-intake.ts';

/** How far the reading is, with what failed and why; it can be stopped and taken up again. */
export function IntakeProgress({ intake }: { intake: Intake }) {
  const { items, running, queue } = intake;
  if (items.length === 0) return null;
  const failed = items.flatMap(({ id, name, state }) =>
    state.kind === 'failed' ? [{ id, name, why: state.why }] : [],
  );
  const done = items.filter(({ state }) => state.kind === 'done').length + failed.length;
  const isOver = done === items.length;
  const current = items.find(({ state }) => state.kind === 'reading');
  return (
    <section class="part shelf-progress" aria-labelledby="progress-title">
      <h2 id="progress-title">Progress</h2>
      <progress aria-labelledby="progress-title" value={done} max={items.length} />
      <p role="status">
        {isOver
          ? `${describeItems(done)} read. ${describeResults(items)}`
          : running
            ? `${done} of ${describeItems(items.length)} read.`
            : `Stopped after ${done} of ${describeItems(items.length)}. What is read stays.`}
      </p>
      {current && running && <p class="quiet shelf-source">Reading “{current.name}”…</p>}
      <p class="row">
        {!isOver && (
          <button type="button" class="action" onClick={running ? queue.stop : queue.resume}>
            {running ? 'Stop' : 'Go on'}
          </button>
        )}
        {failed.length > 0 && (
          <button type="button" class="plain" onClick={queue.retry}>
            Try again what failed
          </button>
        )}
        {isOver && (
          <button type="button" class="plain" onClick={queue.clear}>
            Clear this list
          </button>
        )}
      </p>
      {failed.length > 0 && (
        <>
          <h3>Not read</h3>
          <ul class="shelf-failed">
            {failed.map(({ id, name, why }) => (
              <li key={id}>
                <span class="shelf-failed-name">{name}</span> {why}
              </li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}

function describeItems(n: number): string {
  return n === 1 ? 'one' : n.toLocaleString('en');
}

function describeResults(items: readonly IntakeItem<IntakeResult>[]): string {
  const sum = { shelved: 0, there: 0, looked: 0, failed: 0 };
  for (const { state } of items) {
    if (state.kind === 'failed') sum.failed++;
    if (state.kind !== 'done') continue;
    sum.shelved += state.result.shelved;
    sum.there += state.result.there;
    sum.looked += state.result.looked.length;
  }
  const parts = [
    sum.shelved > 0 && `${texts(sum.shelved)} put on the shelf`,
    sum.there > 0 && `${texts(sum.there)} on the shelf already`,
    sum.looked > 0 && `${texts(sum.looked)} in the table below`,
    sum.failed > 0 && `${sum.failed === 1 ? 'one' : sum.failed} failed`,
  ].filter((part) => part !== false);
  return parts.length === 0 ? '' : `${parts.join(', ')}.`;
}

function texts(n: number): string {
  return n === 1 ? 'one text' : `${n.toLocaleString('en')} texts`;
}
