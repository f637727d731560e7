import type { ComponentChildren } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { PatternId, WordKey } from '../../analyze/types.ts';
import type {
  PageReport,
  PageWords,
  WordExplanation,
  WordInSentence,
  WordSwap,
} from '../../contract/page-contract.ts';
import { askBackground, askPage, goToPlace } from '../../host/page-talk/client.ts';
import { listDetails } from '../../host/page-talk/describe-fault.ts';
import { explainEmptyText } from '../../host/page-talk/explain-closed-page.ts';
import { type WordInView, watchWordInView } from '../../host/page-talk/word-in-view.ts';
import { countedAs } from '../../host/store/change-group.ts';
import { setCountsAs, setTaught } from '../../host/store/edit-group.ts';
import { type Groups, shownGroup } from '../../host/store/groups-store.ts';
import { findSequence, type Sequences } from '../../host/store/sequences-store.ts';
import { forgetEdits, noteEdit } from '../../ui/edit-log.ts';
import { FoldedLegend } from '../../ui/mark-legend.tsx';
import { patternName } from '../../ui/pattern-name.ts';
import { patternNames } from '../../ui/pattern-names.ts';
import { Reach } from '../../ui/reach.tsx';
import { standingSentence } from '../../ui/standing-sentence.ts';
import { UndoLine } from '../../ui/undo-line.tsx';
import { LoadFault, useLoaded } from '../../ui/use-loaded.ts';
import { WordButtons, type WordLinks } from '../../ui/word-buttons.tsx';
import { say } from '../../wording/say.ts';
import './shaded-page.css';
import { AlsoTaught } from './also-taught.tsx';
import { DeskLink } from './desk-link.tsx';
import { FaultDetails } from './fault-details.tsx';
import { type FigureLimit, findLimit } from './figure-limits.ts';
import { FigureNote } from './figure-note.tsx';
import { LookChoice } from './look-choice.tsx';
import { MissingPatterns } from './missing-patterns.tsx';
import { PdfNote } from './pdf-note.tsx';
import { ScopeChoice } from './scope-choice.tsx';
import { ShelfButton } from './shelf-button.tsx';
import { TrialNote } from './trial-note.tsx';
import { WordLine } from './word-line.tsx';

/** Loaded on demand, because few pages contain drawn text. */
const loadScreenButton = () => import('./screen-button.tsx').then(({ ScreenButton }) => ScreenButton);

/** The list name of the word whose card is open on the page. */
const IN_VIEW = 'in view';

/** Loaded on demand, because the figures are shown before any word card. */
const loadWordCard = () => import('./word-card.tsx').then(({ WordCard }) => WordCard);

interface ShadedPageProps {
  readonly tab: number;
  readonly page: PageWords;
  readonly report: PageReport;
  readonly groups: Groups | null;
  readonly sequences: Sequences | null;
  /** The line that shows the group. */
  readonly children: ComponentChildren;
}

/** A shaded page in the panel: its readable share, the missing patterns, and one word taken apart. */
export function ShadedPage({ tab, page, report, groups, sequences, children }: ShadedPageProps) {
  const group = groups && shownGroup(groups);
  const steps = (sequences && group && findSequence(sequences, group.sequence)?.steps) ?? [];
  const stepOf = (pattern: PatternId): number | null =>
    steps.findIndex(({ teaches }) => teaches.includes(pattern)) + 1 || null;
  const [opened, setOpened] = useState<WordLinks['opened']>(null);
  const explanation = useExplanation(opened?.word ?? null, report);
  const isHard =
    opened !== null && explanation !== null && /beyond|unsure/.test(explanation.verdict.standing);
  const inView = useWordInView(tab);
  const viewed = useSwaps(tab, inView?.word ?? null, inView?.place, report);
  const found = useSwaps(tab, isHard && opened.list !== IN_VIEW ? opened.word : null, undefined, report);
  // Opens the word whose card the page shows, if a word is open in the panel.
  useEffect(() => {
    if (inView) setOpened((now) => now && { list: IN_VIEW, word: inView.word });
  }, [inView]);
  const places = useRef(new Map<WordKey, number>());
  const opener = useRef<Element | null>(null);
  const WordCard = useLoaded(loadWordCard);
  useEffect(() => forgetEdits, []);
  const { tally, gaps, words } = report;
  const limit = findLimit(page, tally);
  if (tally.running + tally.names === 0) {
    return (
      <>
        <PageHead tab={tab} page={page} />
        {!page.pdf && <EmptyNote tab={tab} page={page} limit={limit} />}
        {children}
      </>
    );
  }

  function goTo(word: WordKey): void {
    const n = places.current.get(word) ?? 0;
    places.current.set(word, n + 1);
    void goToPlace(tab, word, n);
  }
  async function teach(id: PatternId, isTaught: boolean): Promise<void> {
    if (!groups) return;
    const says = say(isTaught ? 'card.nowTaught' : 'card.notTaught', { pattern: patternName(id) });
    noteEdit(says, await setTaught(groups.chosen, id, isTaught));
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
    card: explanation && WordCard && !(WordCard instanceof LoadFault) && (
      <WordCard
        explanation={explanation}
        swaps={opened?.list === IN_VIEW ? viewed : found}
        tab={tab}
        counts={group && opened ? countedAs(group, opened.word) : 'judged'}
        onCounts={async (as, says) =>
          opened && groups && noteEdit(says, await setCountsAs(groups.chosen, opened.word, as))
        }
        onNext={() => opened && goTo(opened.word)}
        onClose={close}
      />
    ),
  };
  return (
    <>
      <PageHead tab={tab} page={page} />
      <PageFaults tab={tab} page={page} report={report} />
      {limit && <FigureNote limit={limit.name} page={page} />}
      {limit?.name === page.drawn && page.drawn && <DrawnPart tab={tab} />}
      <Reach tally={tally} soon={report.soon} withheld={limit?.withheld} />
      {children}
      <p class="unseen" role="status">
        {explanation && describeInShort(explanation)}
      </p>
      {limit === null && tally.beyond + tally.unsure === 0 && <p class="note">{say('panel.allRead')}</p>}
      {opened?.list === IN_VIEW && (
        <div class="card-in-view" ref={showFromTop}>
          {links.card}
        </div>
      )}
      <MissingPatterns gaps={gaps} links={links} onTaught={teach} stepOf={stepOf} step={group?.step ?? 0} />
      {irregular.length + unsure.size > 0 && (
        <section aria-labelledby="others-title">
          <h2 id="others-title">{say('panel.others')}</h2>
          <p class="quiet">{say('panel.othersHint')}</p>
          <WordButtons list="others" words={[...irregular, ...unsure]} links={links} />
        </section>
      )}
      <AlsoTaught ids={group?.alsoTaught ?? []} onTaught={teach} />
      <FoldedLegend />
      <div class="page-tools">
        <LookChoice />
        <a class="plain" href="/shelf.html" target="_blank" rel="noopener">
          {say('panel.openShelf')}
        </a>
        <a class="plain" href="/help.html" target="_blank" rel="noopener">
          {say('panel.help')}
        </a>
      </div>
      {page.pdf?.isOpen !== false && <p class="quiet">{say('panel.printed')}</p>}
      <footer class="quiet">{say('panel.deference')}</footer>
      <div class="panel-bar">
        {groups && <TrialNote groups={groups} />}
        {inView && (
          <WordLine
            word={inView.word}
            swaps={viewed}
            tab={tab}
            isOpen={opened?.list === IN_VIEW}
            onToggle={() => {
              opener.current = document.activeElement;
              setOpened(opened?.list === IN_VIEW ? null : { list: IN_VIEW, word: inView.word });
            }}
          />
        )}
        <UndoLine />
        <p class="page-tools">
          <DeskLink tab={tab} />
          <ReportLink tab={tab} />
          <ShelfButton tab={tab} version={page.scope} />
        </p>
      </div>
    </>
  );
}

/** Brings the part that the bar opened into view. */
function showFromTop(part: Element | null): void {
  part?.scrollIntoView();
}

/** Shows which text of the page is checked. A PDF in a browser tab is checked whole, so there is no choice. */
function PageHead({ tab, page }: Pick<ShadedPageProps, 'tab' | 'page'>) {
  return (
    <>
      {page.pdf && <PdfNote tab={tab} pdf={page.pdf} />}
      {page.pdf?.isOpen !== false && <ScopeChoice tab={tab} page={page} />}
    </>
  );
}

/** Lists the words that could not be judged or marked because of an error in the extension. Usually renders nothing. */
function PageFaults({ tab, page, report }: Pick<ShadedPageProps, 'tab' | 'page' | 'report'>) {
  const { faults } = report;
  if (faults.length === 0 && page.fault === null) return null;
  const details = [
    ...faults.map(({ word, fault }) => `${word}: ${fault}`),
    ...(page.fault === null ? [] : [page.fault]),
  ];
  return (
    <FaultDetails
      says={faults.length > 0 ? say('panel.unjudged', { count: faults.length }) : say('panel.unmarked')}
      details={listDetails(details)}
      onRetry={() => void askPage(tab, 'rejudge', undefined as never, 0)}
    />
  );
}

function EmptyNote({
  tab,
  page,
  limit,
}: Pick<ShadedPageProps, 'tab' | 'page'> & { limit: FigureLimit | null }) {
  return (
    <div class="note">
      {limit && !page.drawn ? <FigureNote limit={limit.name} page={page} /> : <p>{explainEmptyText(page)}</p>}
      {page.drawn && page.scope !== 'selection' && <DrawnPart tab={tab} />}
      <DeskLink />
    </div>
  );
}

/** The button that reads drawn text. */
function DrawnPart({ tab }: { tab: number }) {
  const ScreenButton = useLoaded(loadScreenButton);
  if (ScreenButton === null || ScreenButton instanceof LoadFault) return null;
  return (
    <p class="page-tools">
      <ScreenButton tab={tab} />
    </p>
  );
}

/** Returns the sentence that a screen reader speaks when a word is opened, before the word's card is read. */
function describeInShort({ analysis, verdict }: WordExplanation): string {
  const needed = patternNames(verdict.missing);
  const short = `${analysis.word}: ${standingSentence(verdict)}`;
  return needed ? `${short} ${say('panel.neededInShort', { patterns: needed })}` : short;
}

/** Links to the report on a shaded tab. The report has the climb of the text and all other details. */
function ReportLink({ tab }: { tab: number }) {
  return (
    <a class="tool" href={`/report.html#tab/${tab}`} target="_blank" rel="noopener">
      {say('panel.climbAndReport')}
    </a>
  );
}

/**
 * Returns the explanation of one word, or null until it is loaded. Asks again when `version` changes, that is, when the
 * group has changed.
 */
function useExplanation(word: WordKey | null, version: unknown): WordExplanation | null {
  const [found, setFound] = useState<WordExplanation | null>(null);
  useEffect(() => {
    if (word === null) return setFound(null);
    let current = true;
    askBackground('explain', word).then(
      (answer) => current && setFound(answer),
      () => current && setFound(null),
    );
    return () => {
      current = false;
    };
  }, [word, version]);
  return found?.analysis.word.toLowerCase() === word?.toLowerCase() ? found : null;
}

/** Returns the word whose card was opened last on the page, or null if none was opened yet. */
function useWordInView(tab: number): WordInView | null {
  const [word, setWord] = useState<WordInView | null>(null);
  useEffect(() => {
    const controller = new AbortController();
    watchWordInView(tab, setWord, controller.signal);
    return () => controller.abort();
  }, [tab]);
  return word;
}

/**
 * Returns words that can replace a word in the given sentence, or else at its first place in the page. Returns null
 * until the words are found.
 */
function useSwaps(tab: number, word: WordKey | null, place: WordInSentence | undefined, version: unknown) {
  const [swaps, setSwaps] = useState<readonly WordSwap[] | null>(null);
  useEffect(() => {
    setSwaps(null);
    if (word === null) return;
    let current = true;
    const placed = place ? Promise.resolve(place) : askPage(tab, 'sentence', { key: word, n: 0 });
    placed
      .then((sentence) => (sentence ? askBackground('swaps', sentence) : []))
      .then(
        (found) => current && setSwaps(found),
        () => current && setSwaps([]),
      );
    return () => {
      current = false;
    };
  }, [tab, word, place, version]);
  return swaps;
}
