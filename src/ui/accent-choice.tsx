import type { Accent } from '../analyze/types.ts';
import { say } from '../wording/say.ts';

const ACCENTS: readonly Accent[] = ['american', 'british'];

interface AccentChoiceProps {
  readonly accent: Accent;
  readonly onChange: (accent: Accent) => void;
}

/** A choice of the English accent that a group is taught, with its effects. */
export function AccentChoice({ accent, onChange }: AccentChoiceProps) {
  return (
    <div class="picker">
      <label for="accent">{say('ui.accent')}</label>
      <select
        id="accent"
        class="field"
        aria-describedby="accent-means"
        value={accent}
        onChange={({ currentTarget }) => onChange(currentTarget.value as Accent)}
      >
        {ACCENTS.map((each) => (
          <option key={each} value={each}>
            {say(`ui.${each}`)}
          </option>
        ))}
      </select>
      <p id="accent-means" class="quiet">
        {say(`ui.${accent}Means`)}
      </p>
    </div>
  );
}
