import { useRef, useState } from 'preact/hooks';
import type { PatternId, Report, WordKey } from '../analyze/types.ts';
import { goToPlace } from '../host/client.ts';
import { explainEmptyText } from '../host/explain-closed-page.ts';
import { changeChosen } from '../host/groups-store.ts';
import type { PageWords, WordExplanation } from '../host/messages.ts';
import { GapList } from '../ui/gap-list.tsx';
import { patternNames } from '../ui/pattern-names.ts';
import { Reach } from '../ui/reach.tsx';
import { standingSentence } from '../ui/standing-sentence.ts';
import { WordButtons, type WordLinks } from '../ui/word-buttons.tsx';
import { say } from '../wording/say.ts';
import { AlsoTaught } from './also-taught.tsx';
import { DeskLink } from './desk-link.tsx';
import { LookChoice } from './look-choice.tsx';
import { ReportLink } from './report-link.tsx';
import { ScopeChoice } from './scope-choice.tsx';
import { ShelfButton } from './shelf-button.tsx';
import { useExplanation } from './use-explanation.ts';
import { useSwaps } from './use-swaps.ts';
import { WordCard } from './word-card.tsx';

interface ShadedPageProps {
  readonly tab: number;
  readonly page: PageWords;
  readonly report: Report;
  readonly alsoTaught: readonly PatternId[];
}

/** What a shaded page asks of the group: its reach, the missing patterns, and one word taken apart. */
export function ShadedPage({ tab, page, report, alsoTaught }: ShadedPageProps) {
  const [opened, setOpened] = useState<WordLinks['opened']>(null);
  const explanation = useExplanation(opened?.word ?? null, report);
  const isHard = explanation !== null && /beyond|unsure/.test(explanation.verdict.standing);
  const swaps = useSwaps(tab, isHard ? (opened?.word ?? null) : null, report);
  const places = useRef(new Map<WordKey, number>());
  const opener = useRef<Element | null>(null);
  const { tally, gaps, words } = report;
  if (tally.running + tally.names === 0) {
    return (
      <>
        <ScopeChoice tab={tab} page={page} />
        <EmptyNote page={page} />
      </>
    );
  }

  function goTo(word: WordKey): void {
    const n = places.current.get(word) ?? 0;
    places.current.set(word, n + 1);
    void goToPlace(tab, word, n);
  }
  function close(): void {
    setOpened(null);
    if (opener.current instanceof HTMLElement) opener.current.focus();
  }
  const unsure = new Set(words.filter(({ standing }) => standing === 'unsure').map(({ word }) => word));
  const irregular = words
    .filter(({ standing, missing }) => standing === 'beyond' && missing.includes('irregular'))
    .map(({ word }) => word);
  const links: WordLinks = {
    opened,
    isUnsure: (word) => unsure.has(word),
    open: (list, word) => {
      opener.current = document.activeElement;
      setOpened({ list, word });
      goTo(word);
    },
    card: explanation && (
      <WordCard
        explanation={explanation}
        swaps={swaps}
        tab={tab}
        onNext={() => opened && goTo(opened.word)}
        onClose={close}
      />
    ),
  };
  return (
    <>
      <ScopeChoice tab={tab} page={page} />
      <Reach tally={tally} />
      <p class="page-tools">
        <DeskLink tab={tab} />
        <ReportLink tab={tab} />
        <LookChoice />
      </p>
      <ShelfButton tab={tab} version={page.scope} />
      <p class="unseen" role="status">
        {explanation && describeInShort(explanation)}
      </p>
      {tally.beyond + tally.unsure === 0 && <p class="note">{say('panel.allRead')}</p>}
      <GapList
        gaps={gaps}
        links={links}
        onTaught={(id) => void changeChosen((group) => ({ ...group, alsoTaught: [...group.alsoTaught, id] }))}
      />
      {irregular.length + unsure.size > 0 && (
        <section aria-labelledby="others-title">
          <h2 id="others-title">{say('panel.others')}</h2>
          <p class="quiet">{say('panel.othersHint')}</p>
          <WordButtons list="others" words={[...irregular, ...unsure]} links={links} />
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

function EmptyNote({ page }: { page: PageWords }) {
  return (
    <div class="note">
      <p>{explainEmptyText(page)}</p>
      <DeskLink />
    </div>
  );
}

/** What a screen reader says when a word is opened, before its card is read. */
function describeInShort({ analysis, verdict }: WordExplanation): string {
  const needed = patternNames(verdict.missing);
  const short = `${analysis.word}: ${standingSentence(verdict)}`;
  return needed ? `${short} ${say('panel.neededInShort', { patterns: needed })}` : short;
}
