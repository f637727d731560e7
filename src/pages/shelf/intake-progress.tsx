import { say } from '../../wording/say.ts';
import type { IntakeItem } from './intake-queue.ts';
import type { Intake, IntakeResult } from './use-intake.ts';

/** Shows the progress of the reading, and which texts failed and why. The reading can be stopped and resumed. */
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
      <h2 id="progress-title">{say('shelf.progress')}</h2>
      <progress aria-labelledby="progress-title" value={done} max={items.length} />
      <p role="status">
        {isOver
          ? `${say('shelf.allRead', { count: done - failed.length })} ${describeResults(items)}`
          : running
            ? say('shelf.readSoFar', { done, of: items.length })
            : say('shelf.stoppedAfter', { done, of: items.length })}
      </p>
      {current && running && (
        <p class="quiet shelf-source">{say('shelf.readingOne', { name: current.name })}</p>
      )}
      <p class="row">
        {!isOver && (
          <button type="button" class="action" onClick={running ? queue.stop : queue.resume}>
            {running ? say('shelf.stop') : say('shelf.goOn')}
          </button>
        )}
        {failed.length > 0 && (
          <button type="button" class="plain" onClick={queue.retry}>
            {say('shelf.tryAgain')}
          </button>
        )}
        {isOver && (
          <button type="button" class="plain" onClick={queue.clear}>
            {say('shelf.clear')}
          </button>
        )}
      </p>
      {failed.length > 0 && (
        <>
          <h3>{say('shelf.notRead')}</h3>
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
    sum.shelved > 0 && say('shelf.sumShelved', { count: sum.shelved }),
    sum.there > 0 && say('shelf.sumThere', { count: sum.there }),
    sum.looked > 0 && say('shelf.sumLooked', { count: sum.looked }),
    sum.failed > 0 && say('shelf.sumFailed', { count: sum.failed }),
  ].filter((part) => part !== false);
  return parts.length === 0 ? '' : `${parts.join(', ')}.`;
}
