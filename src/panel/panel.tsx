import { useRef, useState } from 'preact/hooks';
import type { Report } from '../analyze/types.ts';
import { askPage } from '../host/client.ts';
import { changeChosen, chosenGroup } from '../host/groups-store.ts';
import { AlsoTaught } from './also-taught.tsx';
import { GapList } from './gap-list.tsx';
import { GroupPicker } from './group-picker.tsx';
import { Reach } from './reach.tsx';
import { useGroups } from './use-groups.ts';
import { type PageState, usePage } from './use-page.ts';
import { WordButtons } from './word-buttons.tsx';
import { WordCard } from './word-card.tsx';

/** The side panel: the group, the reach of the page in front, and what is missing. */
export function Panel() {
  const groups = useGroups();
  const { state, shade } = usePage();
  return (
    <main class="panel">
      <header class="masthead">
        <h1>Wordreach</h1>
        {state.kind === 'shaded' && state.page.title !== '' && <p class="page-title">{state.page.title}</p>}
      </header>
      {groups && <GroupPicker groups={groups} />}
      <PageView state={state} shade={shade} alsoTaught={groups ? chosenGroup(groups).alsoTaught : []} />
      <footer class="quiet">
        Wordreach estimates what can be decoded; it does not assess a child. Your programme and your own
        judgement come first.
      </footer>
    </main>
  );
}

interface PageViewProps {
  readonly state: PageState;
  readonly shade: () => void;
  readonly alsoTaught: readonly string[];
}

function PageView({ state, shade, alsoTaught }: PageViewProps) {
  switch (state.kind) {
    case 'loading':
      return <p class="note">Reading the page…</p>;
    case 'closed':
      return <p class="note">{state.why}</p>;
    case 'unshaded':
      return (
        <div class="note">
          <p>Open a story, then press the Wordreach button in the toolbar to shade it for this group.</p>
          <button type="button" class="action" onClick={shade}>
            Shade this page
          </button>
        </div>
      );
    case 'shaded':
      return <ShadedPage tab={state.tab} report={state.report} alsoTaught={alsoTaught} />;
  }
}

function ShadedPage({
  tab,
  report,
  alsoTaught,
}: {
  tab: number;
  report: Report;
  alsoTaught: readonly string[];
}) {
  const [word, setWord] = useState<string | null>(null);
  const places = useRef(new Map<string, number>());
  const { tally, gaps, words } = report;

  function goTo(next: string): void {
    const n = places.current.get(next) ?? 0;
    places.current.set(next, n + 1);
    setWord(next);
    void askPage(tab, 'goTo', { key: next, n });
  }

  if (tally.running + tally.names === 0) return <p class="note">There are no words to read on this page.</p>;
  const others = words.filter(
    ({ standing, missing }) =>
      standing === 'unsure' || (standing === 'beyond' && missing.includes('irregular')),
  );
  return (
    <>
      <Reach tally={tally} />
      {word !== null && (
        <WordCard word={word} version={report} onNext={() => goTo(word)} onClose={() => setWord(null)} />
      )}
      {gaps.length > 0 ? (
        <GapList
          gaps={gaps}
          onWord={goTo}
          onTaught={(id) =>
            void changeChosen((group) => ({ ...group, alsoTaught: [...group.alsoTaught, id] }))
          }
        />
      ) : (
        tally.beyond === 0 && <p class="note">Nothing on this page is beyond the group.</p>
      )}
      {others.length > 0 && (
        <section aria-labelledby="others-title">
          <h2 id="others-title">Irregular or unsure</h2>
          <p class="quiet">
            Words no pattern opens: teach them by sight, swap them, or look at them yourself.
          </p>
          <WordButtons words={others.map((entry) => entry.word)} onWord={goTo} />
        </section>
      )}
      <AlsoTaught
        ids={alsoTaught}
        onUntick={(id) =>
          void changeChosen((group) => ({
            ...group,
            alsoTaught: group.alsoTaught.filter((other) => other !== id),
          }))
        }
      />
    </>
  );
}
