import { useState } from 'preact/hooks';
import { parseGroup } from '../../analyze/index.ts';
import type { Accent } from '../../analyze/types.ts';
import { accentAtFirst, changeGroups, freeGroupId } from '../../host/store/groups-store.ts';
import { listSequences, loadSequences, watchSequences } from '../../host/store/sequences-store.ts';
import { StorageFault } from '../../host/store/store-item.ts';
import { typedStore } from '../../host/store/typed-store.ts';
import { FaultNote } from '../../ui/fault-note.tsx';
import { sayList } from '../../ui/say-list.ts';
import { useTyped } from '../../ui/use-typed.ts';
import { useWatched } from '../../ui/use-watched.ts';
import { say } from '../../wording/say.ts';
import '../../ui/page.css';
import '../../ui/wide-page.css';
import { GroupStep } from './group-step.tsx';
import { SequenceStep } from './sequence-step.tsx';
import './welcome.css';

const PRACTICE = 'practice.html';

/** The first page after installing. It asks for a sequence and a group, and leads to a story to try them on. */
export function WelcomePage() {
  const sequences = useWatched(loadSequences, watchSequences);
  const [picked, pick] = useState<string | null>(null);
  const { typed, type: setName, done } = useTyped(typedStore, 'first group');
  const name = typed ?? '';
  const [step, setStep] = useState<number | null>(null);
  const [accentPicked, setAccent] = useState<Accent | null>(null);
  const [fault, setFault] = useState('');
  if (!sequences) return <FaultNote kind={StorageFault} />;
  const all = listSequences(sequences);
  const sequence = all.find(({ id }) => id === (picked ?? sequences.preset)) ?? all[0]!;
  const through = step !== null && step <= sequence.steps.length ? step : null;

  const accent = accentPicked ?? accentAtFirst(sequence);

  const missing = [
    name.trim() === '' && say('welcome.toDoName'),
    through === null && say('welcome.toDoStep'),
  ].filter((part) => part !== false);

  async function keep(): Promise<void> {
    if (name.trim() === '') {
      setFault(say('welcome.nameMissing'));
      document.getElementById('welcome-name')?.focus();
      return;
    }
    if (through === null) {
      setFault(say('welcome.stepMissing'));
      (
        document.querySelector<HTMLElement>('.word-row input') ?? document.getElementById('welcome-step')
      )?.focus();
      return;
    }
    try {
      const group = parseGroup({ name: name.trim(), accent, sequence: sequence.id, step: through });
      await changeGroups((groups) => {
        const id = freeGroupId(groups);
        return { ...groups, chosen: id, groups: { ...groups.groups, [id]: group } };
      });
      done();
      location.href = PRACTICE;
    } catch (error) {
      setFault(say('welcome.failed', { why: error instanceof Error ? error.message : String(error) }));
    }
  }

  return (
    <div class="page welcome">
      <header class="welcome-head">
        <p class="brand">Wordreach</p>
        <h1>{say('welcome.headline')}</h1>
        <p class="welcome-lead">{say('welcome.lead')}</p>
        <p class="row">
          <a class="plain" href={PRACTICE}>
            {say('welcome.skip')}
          </a>
          <a class="plain" href="/help.html">
            {say('ui.helpPage')}
          </a>
        </p>
      </header>
      <main class="welcome-columns" tabIndex={-1}>
        <Guide />
        <form
          class="welcome-steps"
          onSubmit={(event) => {
            event.preventDefault();
            void keep();
          }}
        >
          <SequenceStep
            sequences={sequences}
            chosen={sequence.id}
            onChoose={(id) => {
              pick(id);
              setAccent(null);
              // A step of another sequence does not apply to this sequence.
              if (id !== sequence.id) setStep(null);
            }}
          />
          <GroupStep
            sequence={sequence}
            step={through}
            name={name}
            accent={accent}
            onName={setName}
            onStep={setStep}
            onAccent={setAccent}
          />
          <section class="welcome-step" aria-labelledby="welcome-try">
            <h2 id="welcome-try">{say('welcome.stepTry')}</h2>
            <p class="quiet">{say('welcome.tryHint')}</p>
          </section>
          <div class="welcome-finish">
            <button type="submit" class="action">
              {say('welcome.keepAndTry')}
            </button>
            <p class="quiet">{missing.length > 0 && say('welcome.stillToDo', { what: sayList(missing) })}</p>
            <p class="welcome-fault" role="alert">
              {fault}
            </p>
          </div>
        </form>
      </main>
    </div>
  );
}

/** The product in four pictures (`npm run pictures` takes them). */
function Guide() {
  const parts = [
    { picture: 'shade', text: say('welcome.guideShade') },
    { picture: 'panel', text: say('welcome.guidePanel') },
    { picture: 'word', text: say('welcome.guideWord') },
    { picture: 'desk', text: say('welcome.guideDesk') },
  ];
  return (
    <section class="guide" aria-labelledby="guide-title">
      <h2 id="guide-title">{say('welcome.guide')}</h2>
      <ol class="guide-parts">
        {parts.map(({ picture, text }) => (
          <li key={picture}>
            <img src={`/guide/${picture}.png`} alt="" loading="lazy" />
            <p>{text}</p>
          </li>
        ))}
      </ol>
      <p class="quiet">{say('welcome.guideDeference')}</p>
    </section>
  );
}
