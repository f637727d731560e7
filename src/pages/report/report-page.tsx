import { useEffect, useRef, useState } from 'preact/hooks';
import { loadEngine } from '../../host/data/load-engine.ts';
import { type Groups, loadGroups, watchGroups } from '../../host/store/groups-store.ts';
import { loadSequences, watchSequences } from '../../host/store/sequences-store.ts';
import { StorageFault } from '../../host/store/store-item.ts';
import { nameFile } from '../../passage/print/name-file.ts';
import { FaultNote } from '../../ui/fault-note.tsx';
import { Masthead } from '../../ui/masthead.tsx';
import { saveFile } from '../../ui/save-file.ts';
import { LoadFault, useLoaded } from '../../ui/use-loaded.ts';
import { useWatched } from '../../ui/use-watched.ts';
import { spokenDirection, spokenLanguage } from '../../wording/say.ts';
import '../../ui/page.css';
import '../../ui/wide-page.css';
import './report.css';
import { say } from '../../wording/say.ts';
import type { ReportText } from './report-text.ts';
import { ReportView } from './report-view.tsx';
import { useReportText } from './use-report-text.ts';

/** The report page. It shows all results of one text for one group: reach, climb, gaps, words and settings. */
export function ReportPage() {
  const text = useReportText();
  const engine = useLoaded(loadEngine);
  const groups = useWatched(loadGroups, watchGroups);
  const sequences = useWatched(loadSequences, watchSequences);
  const [chosen, setChosen] = useState<string | null>(null);
  const [isRefused, setRefused] = useState(false);
  const article = useRef<HTMLElement>(null);
  const title = text !== null && 'title' in text ? text.title : null;
  // The browser also uses this title for the printed page and the PDF.
  useEffect(() => {
    if (title !== null) document.title = say('report.documentTitle', { title });
  }, [title]);
  const unloaded = engine instanceof LoadFault ? say('report.noTable', { why: engine.message }) : null;
  const fault = text !== null && 'fault' in text ? text.fault : unloaded;
  const isReady =
    text !== null && !('fault' in text) && !(engine instanceof LoadFault) && engine && groups && sequences;
  const groupId = isReady ? pickGroup([chosen, text.groupId], groups) : '';

  const save = ({ title }: ReportText): void => {
    const name = say('report.fileName', { group: groups?.groups[groupId]?.name ?? '' });
    const html = writeReport(article.current!, `${title}: ${name}`);
    saveFile(nameFile(title, name, 'html'), new Blob([html], { type: 'text/html;charset=utf-8' }));
  };
  return (
    <>
      <div class="report-head">
        <Masthead title={say('report.title')} />
      </div>
      <main class="report-page" tabIndex={-1}>
        {isReady ? (
          <>
            <div class="report-bar">
              <span>
                <label for="report-group" class="quiet">
                  {say('report.for')}
                </label>{' '}
                <select
                  id="report-group"
                  class="field"
                  value={groupId}
                  onChange={(event) => setChosen(event.currentTarget.value)}
                >
                  {Object.entries(groups.groups).map(([id, { name }]) => (
                    <option key={id} value={id}>
                      {name}
                    </option>
                  ))}
                </select>
              </span>
              <button type="button" class="action" onClick={() => print()}>
                {say('report.print')}
              </button>
              <button type="button" class="plain" onClick={() => save(text)}>
                {say('report.saveHtml')}
              </button>
            </div>
            <ReportView {...{ text, engine, groups, sequences, groupId, article }} />
          </>
        ) : (
          !isRefused && (
            <p class={fault ? 'note note-wrong' : 'note'} role="status">
              {fault ?? say('report.reading')}
            </p>
          )
        )}
      </main>
      <FaultNote kind={StorageFault} onFault={setRefused} />
    </>
  );
}

/** Returns the first of the wished-for groups that exists, or else the chosen group. */
function pickGroup(wished: readonly (string | null)[], { groups, chosen }: Groups): string {
  return wished.find((id) => id !== null && Object.hasOwn(groups, id)) ?? chosen;
}

/**
 * Returns a report as a separate web page that looks as on the screen. The page has no controls (`data-screen`) and no
 * scripts. It loads no other files and tells nobody that it is read.
 */
function writeReport(report: Element, title: string): string {
  const page = document.implementation.createHTMLDocument(title);
  page.documentElement.lang = spokenLanguage();
  page.documentElement.dir = spokenDirection();
  const charset = page.createElement('meta');
  charset.setAttribute('charset', 'utf-8');
  const viewport = page.createElement('meta');
  viewport.name = 'viewport';
  viewport.content = 'width=device-width, initial-scale=1';
  const style = page.createElement('style');
  style.textContent = [...document.styleSheets]
    .flatMap((sheet) => [...sheet.cssRules])
    .map(({ cssText }) => cssText)
    .join('\n');
  page.head.prepend(charset, viewport);
  page.head.append(style);
  const main = page.createElement('main');
  main.className = 'report-page';
  const copy = page.importNode(report, true);
  for (const control of copy.querySelectorAll('[data-screen]')) control.remove();
  main.append(copy);
  page.body.append(main);
  return `<!doctype html>\n${page.documentElement.outerHTML}\n`;
}
