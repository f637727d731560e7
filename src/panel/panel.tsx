import type { PatternId } from '../analyze/types.ts';
import { chosenGroup } from '../host/groups-store.ts';
import { StorageFault } from '../host/store-item.ts';
import { FaultNote } from '../ui/fault-note.tsx';
import { DeskLink } from './desk-link.tsx';
import { GroupPicker } from './group-picker.tsx';
import '../ui/page.css';
import './panel.css';
import { ShadedPage } from './shaded-page.tsx';
import { useGroups } from './use-groups.ts';
import { type PageState, usePage } from './use-page.ts';
import { useSequences } from './use-sequences.ts';

/** The side panel: the group, the reach of the page in front, and what is missing. */
export function Panel() {
  const groups = useGroups();
  const sequences = useSequences();
  const { state, shade } = usePage();
  return (
    <main class="panel" tabIndex={-1}>
      <header class="masthead">
        <h1>Wordreach</h1>
        {state.kind === 'shaded' && state.page.title !== '' && <p class="page-title">{state.page.title}</p>}
      </header>
      <FaultNote kind={StorageFault} />
      {groups && sequences && <GroupPicker groups={groups} sequences={sequences} />}
      <PageView state={state} shade={shade} alsoTaught={groups ? chosenGroup(groups).alsoTaught : []} />
      <footer class="quiet">
        Wordreach estimates what can be decoded; it does not assess a child. Your school’s programme and your
        own judgement come first.
      </footer>
    </main>
  );
}

interface PageViewProps {
  readonly state: PageState;
  readonly shade: () => void;
  readonly alsoTaught: readonly PatternId[];
}

function PageView({ state, shade, alsoTaught }: PageViewProps) {
  switch (state.kind) {
    case 'loading':
      return (
        <p class="note" role="status">
          Reading the page…
        </p>
      );
    case 'closed':
      return (
        <div class="note" role="status">
          <p>{state.why}</p>
          <DeskLink />
        </div>
      );
    case 'unshaded':
      return state.allowed ? (
        <div class="note">
          <p>This page is not shaded.</p>
          <button type="button" class="action" onClick={shade}>
            Shade this page
          </button>
        </div>
      ) : (
        <p class="note">
          Open a story on the web, then press the Wordreach button in the toolbar: it may read a page only
          when you do.
        </p>
      );
    case 'shaded':
      return (
        <ShadedPage
          key={`${state.tab} ${state.page.url}`}
          tab={state.tab}
          page={state.page}
          report={state.report}
          alsoTaught={alsoTaught}
        />
      );
  }
}
