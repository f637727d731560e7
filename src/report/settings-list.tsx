import type { ComponentChildren } from 'preact';
import type { Group, Sequence } from '../analyze/types.ts';
import { patternLabel } from '../marks/pattern-label.ts';
import { describeOptions } from '../ui/describe-options.ts';
import { stepTitle } from '../ui/step-title.ts';

interface SettingsListProps {
  readonly group: Group;
  readonly sequence: Sequence | null;
  readonly storyWords: readonly string[];
}

/** Everything the figures depend on, so that a colleague can follow them. Names of pupils are not told, only how many. */
export function SettingsList({ group, sequence, storyWords }: SettingsListProps) {
  const { step, alsoTaught, notYet, bySight, names, skip = [], options } = group;
  return (
    <dl class="report-settings">
      <Setting says="Sequence">
        {sequence
          ? `${sequence.name}, step ${step} of ${sequence.steps.length}: ${stepTitle(sequence, step)}`
          : 'None: only what is also taught'}
      </Setting>
      <Setting says="Also taught">{alsoTaught.map(patternLabel).join('; ')}</Setting>
      <Setting says="Not yet taught">{notYet.map(patternLabel).join('; ')}</Setting>
      <Setting says="Also by sight">{bySight.join(', ')}</Setting>
      <Setting says="Story words of this text">{storyWords.join(', ')}</Setting>
      <Setting says="Names of the group">
        {names.length > 0 && `${names.length}, not told here; they are names wherever they stand`}
      </Setting>
      <Setting says="Left out">{skip.join(', ')}</Setting>
      <Setting says="How words are judged">
        <ul>
          {describeOptions(options).map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </Setting>
    </dl>
  );
}

function Setting({ says, children }: { says: string; children: ComponentChildren }) {
  if (children === '' || children === false) return null;
  return (
    <div>
      <dt>{says}</dt>
      <dd>{children}</dd>
    </div>
  );
}
