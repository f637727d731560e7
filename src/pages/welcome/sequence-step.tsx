import type { Sequence } from '../../analyze/types.ts';
import { listSequences, type Sequences } from '../../host/store/sequences-store.ts';
import { stepTitle } from '../../ui/step-title.ts';
import { say, sayWith } from '../../wording/say.ts';

interface SequenceStepProps {
  readonly sequences: Sequences;
  /** The id of the chosen sequence. */
  readonly chosen: string;
  readonly onChoose: (id: string) => void;
}

/**
 * The first step: the choice of the sequence that is taught. The teacher's own sequences come first. A sequence that is
 * pasted while this page is open is added to the list.
 */
export function SequenceStep({ sequences, chosen, onChoose }: SequenceStepProps) {
  const { own, school } = sequences;
  return (
    <section class="welcome-step" aria-labelledby="welcome-sequence">
      <h2 id="welcome-sequence">{say('welcome.stepSequence')}</h2>
      <p class="quiet">{say('welcome.sequenceHint')}</p>
      <div class="welcome-sequences" role="radiogroup" aria-labelledby="welcome-sequence">
        {listSequences(sequences).map((sequence) => (
          <label key={sequence.id} class="welcome-sequence">
            <input
              type="radio"
              name="sequence"
              checked={sequence.id === chosen}
              onChange={() => onChoose(sequence.id)}
            />
            <span class="welcome-sequence-name">{sequence.name}</span>
            <span class="quiet">{describe(sequence, { own, school })}</span>
          </label>
        ))}
      </div>
      <p class="row">
        <a class="plain" href="groups.html#paste" target="_blank" rel="noopener">
          {say('welcome.pasteOwn')}
        </a>
        <span class="quiet">{say('welcome.pasteHint')}</span>
      </p>
    </section>
  );
}

function describe(sequence: Sequence, { own, school }: Pick<Sequences, 'own' | 'school'>) {
  const whose = Object.hasOwn(own, sequence.id)
    ? say('welcome.yours')
    : school.includes(sequence.id)
      ? say('welcome.school')
      : null;
  const first = <span>{stepTitle(sequence, 1)}</span>;
  return (
    <>
      {whose && `${whose} · `}
      {!whose && `${say(`ui.${sequence.accent ?? 'eitherAccent'}`)} · `}
      {say('welcome.steps', { count: sequence.steps.length })} · {sayWith('welcome.begins', { what: first })}
    </>
  );
}
