import type { ComponentChildren } from 'preact';
import { accentOf } from '../../analyze/index.ts';
import type { Group, Sequence } from '../../analyze/types.ts';
import { describeOptions } from '../../ui/describe-options.ts';
import { patternNames } from '../../ui/pattern-names.ts';
import { stepTitle } from '../../ui/step-title.ts';
import { say } from '../../wording/say.ts';

interface SettingsListProps {
  readonly group: Group;
  readonly sequence: Sequence | null;
  readonly storyWords: readonly string[];
}

/**
 * Lists everything the figures depend on, so that a colleague can follow them. It shows only the number of pupils'
 * names, not the names.
 */
export function SettingsList({ group, sequence, storyWords }: SettingsListProps) {
  const { step, alsoTaught, notYet, bySight, names, skip = [], options } = group;
  const accent = accentOf(group);
  return (
    <dl class="report-settings">
      <Setting says={say('report.sequence')}>
        {sequence
          ? say('report.sequenceStep', {
              sequence: sequence.name,
              step,
              steps: sequence.steps.length,
              title: stepTitle(sequence, step),
            })
          : say('report.noSequence')}
      </Setting>
      <Setting says={say('ui.accent')}>{say(`ui.${accent}`)}</Setting>
      <Setting says={say('report.alsoTaught')}>{patternNames(alsoTaught)}</Setting>
      <Setting says={say('report.notYet')}>{patternNames(notYet)}</Setting>
      <Setting says={say('report.bySight')}>{bySight.join(', ')}</Setting>
      <Setting says={say('report.storyWords')}>{storyWords.join(', ')}</Setting>
      <Setting says={say('report.names')}>
        {names.length > 0 && say('report.namesHidden', { count: names.length })}
      </Setting>
      <Setting says={say('report.leftOut')}>{skip.join(', ')}</Setting>
      <Setting says={say('ui.howJudged')}>
        <ul>
          {describeOptions(options, accent).map((line) => (
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
