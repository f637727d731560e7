import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { describeFault } from '../../host/page-talk/describe-fault.ts';
import { holdTrial } from '../../host/page-talk/trial-line.ts';
import { type Groups, loadGroups, watchGroups } from '../../host/store/groups-store.ts';
import { loadSequences, type Sequences, watchSequences } from '../../host/store/sequences-store.ts';
import { StorageFault } from '../../host/store/store-item.ts';
import { FaultNote } from '../../ui/fault-note.tsx';
import { LoadFault, useLoaded } from '../../ui/use-loaded.ts';
import { useWatched } from '../../ui/use-watched.ts';
import { say } from '../../wording/say.ts';
import { DeskLink } from './desk-link.tsx';
import { GroupPicker } from './group-picker.tsx';
import { PdfLink } from './pdf-link.tsx';
import '../../ui/page.css';
import './panel.css';
import { FaultDetails } from './fault-details.tsx';
import type { PageState } from './follow-front.ts';
import { TrialNote } from './trial-note.tsx';
import { usePage } from './use-page.ts';

/** Loads the view of a shaded page. Meanwhile the page is asked for its words, and the background for the report. */
const loadShadedPage = () => import('./shaded-page.tsx').then(({ ShadedPage }) => ShadedPage);

/** The side panel: the group, the figures of the page in front, and the missing patterns. */
export function Panel() {
  const groups = useGroups();
  const sequences = useSequences();
  const { state, shade, retry } = usePage();
  useTrialHeld(groups?.trial !== undefined);
  return (
    <main class="panel" tabIndex={-1}>
      <header class="masthead">
        <h1>Wordreach</h1>
        {state.kind === 'shaded' && state.page.title !== '' && <p class="page-title">{state.page.title}</p>}
      </header>
      <FaultNote kind={StorageFault} />
      <PageView state={state} shade={shade} retry={retry} groups={groups} sequences={sequences}>
        {groups && sequences && <GroupPicker groups={groups} sequences={sequences} />}
      </PageView>
    </main>
  );
}

/** Keeps the trial of a step alive as long as the panel is open. */
function useTrialHeld(isTrying: boolean): void {
  useEffect(() => {
    if (!isTrying) return;
    const controller = new AbortController();
    holdTrial(controller.signal);
    return () => controller.abort();
  }, [isTrying]);
}

interface PageViewProps {
  readonly state: PageState;
  readonly shade: () => void;
  readonly retry: () => void;
  readonly groups: Groups | null;
  readonly sequences: Sequences | null;
  /** The line that shows the group. */
  readonly children: ComponentChildren;
}

function PageView({ state, shade, retry, groups, sequences, children }: PageViewProps) {
  const ShadedPage = useLoaded(loadShadedPage);
  if (state.kind === 'shaded' && ShadedPage !== null && !(ShadedPage instanceof LoadFault)) {
    return (
      <ShadedPage
        key={`${state.tab} ${state.page.url}`}
        tab={state.tab}
        page={state.page}
        report={state.report}
        groups={groups}
        sequences={sequences}
      >
        {children}
      </ShadedPage>
    );
  }
  return (
    <>
      {children}
      {groups && <TrialNote groups={groups} />}
      <PageNote state={state} shade={shade} retry={retry} fault={ShadedPage} />
      <footer class="quiet">
        {say('panel.deference')}{' '}
        <a href="/help.html" target="_blank" rel="noopener">
          {say('panel.help')}
        </a>
      </footer>
    </>
  );
}

interface PageNoteProps extends Pick<PageViewProps, 'state' | 'shade' | 'retry'> {
  /** The reason why the view of a shaded page could not be loaded, if any. */
  readonly fault: unknown;
}

/** Says why there are no figures for the page in front, and what to do. */
function PageNote({ state, shade, retry, fault }: PageNoteProps) {
  switch (state.kind) {
    case 'loading':
      return <Reading />;
    case 'closed':
      return (
        <div class="note" role="status">
          <p>{state.why}</p>
          {state.isPdf && <PdfLink />}
          <DeskLink />
        </div>
      );
    case 'failed':
      return <FaultDetails says={state.why} details={state.details} onRetry={retry} />;
    case 'unshaded':
      return state.allowed ? (
        <div class="note">
          <p>{say('panel.notShaded')}</p>
          <button type="button" class="action" onClick={shade}>
            {say('panel.shadeThisPage')}
          </button>
        </div>
      ) : (
        <p class="note">{say('panel.openAStory')}</p>
      );
    case 'shaded': {
      if (!(fault instanceof LoadFault)) return <Reading />;
      const { why, details } = describeFault(fault);
      return <FaultDetails says={why} details={details} onRetry={() => location.reload()} />;
    }
  }
}

function Reading() {
  return (
    <p class="note" role="status">
      {say('panel.readingThePage')}
    </p>
  );
}

/** Returns the stored groups, kept up to date. Null until the groups have been read. */
function useGroups(): Groups | null {
  return useWatched(loadGroups, watchGroups);
}

/** Returns the stored sequences, kept up to date. Null until the sequences have been read. */
function useSequences(): Sequences | null {
  return useWatched(loadSequences, watchSequences);
}
