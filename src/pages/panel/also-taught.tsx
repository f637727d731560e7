import { patternName } from '../../ui/pattern-name.ts';
import { useHeldRows } from '../../ui/use-held-rows.ts';
import { say } from '../../wording/say.ts';

interface AlsoTaughtProps {
  readonly ids: readonly string[];
  readonly onTaught: (id: string, isTaught: boolean) => void;
}

/** Lists the patterns ticked as taught out of order. Each tick can be removed again. */
export function AlsoTaught({ ids, onTaught }: AlsoTaughtProps) {
  const { rows, isGone, hold, leaving } = useHeldRows(ids, (id) => id);
  if (rows.length === 0) return null;
  return (
    <section aria-labelledby="also-title">
      <h2 id="also-title">{say('panel.alsoTaught')}</h2>
      <p class="quiet">{say('panel.alsoTaughtHint')}</p>
      <ul class="also" {...leaving}>
        {rows.map((id) => (
          <li key={id}>
            <label class="tick">
              <input
                type="checkbox"
                checked={!isGone(id)}
                onChange={({ currentTarget: { checked } }) => {
                  hold();
                  onTaught(id, checked);
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
