import { catalogue } from '../analyze/index.ts';

const labels = new Map(catalogue.map(({ id, label }) => [id, label]));

/** Patterns taught out of order, which can be taken back. */
export function AlsoTaught({ ids, onUntick }: { ids: readonly string[]; onUntick: (id: string) => void }) {
  if (ids.length === 0) return null;
  return (
    <section aria-labelledby="also-title">
      <h2 id="also-title">Also taught</h2>
      <ul class="also">
        {ids.map((id) => (
          <li key={id}>
            <label>
              <input type="checkbox" checked onChange={() => onUntick(id)} /> {labels.get(id) ?? id}
            </label>
          </li>
        ))}
      </ul>
    </section>
  );
}
