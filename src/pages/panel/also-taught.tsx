import { patternName } from '../../ui/pattern-name.ts';
import { useKeptFocus } from '../../ui/use-kept-focus.ts';
import { say } from '../../wording/say.ts';

/** Patterns ticked as taught out of order, which can be taken back. */
export function AlsoTaught({ ids, onUntick }: { ids: readonly string[]; onUntick: (id: string) => void }) {
  const { list, leave } = useKeptFocus<HTMLUListElement>(ids);
  if (ids.length === 0) return null;
  return (
    <section aria-labelledby="also-title">
      <h2 id="also-title">{say('panel.alsoTaught')}</h2>
      <p class="quiet">{say('panel.alsoTaughtHint')}</p>
      <ul class="also" ref={list}>
        {ids.map((id, i) => (
          <li key={id}>
            <label class="tick">
              <input
                type="checkbox"
                checked
                onChange={() => {
                  leave(i);
                  onUntick(id);
                }}
              />{' '}
              {patternName(id)}
            </label>
          </li>
        ))}
      </ul>
    </section>
  );
}
