import { loadShortcuts, type ShortcutName } from '../../host/background/load-shortcuts.ts';
import { listDetails } from '../../host/page-talk/describe-fault.ts';
import { Masthead } from '../../ui/masthead.tsx';
import '../../ui/page.css';
import { MarkLegend } from '../../ui/mark-legend.tsx';
import '../../ui/mark-legend.css';
import { useCopied } from '../../ui/use-copied.ts';
import { LoadFault, useLoaded } from '../../ui/use-loaded.ts';
import '../../ui/wide-page.css';
import { say, type TextId } from '../../wording/say.ts';
import './help.css';

const TERMS = [
  'pattern',
  'readable',
  'decodable',
  'notYet',
  'bySight',
  'unsure',
  'closed',
  'open',
  'vce',
  'team',
  'rControlled',
  'consonantLe',
  'schwa',
  'sequence',
  'step',
  'group',
  'passage',
  'desk',
  'shelf',
] as const;

const COMMANDS = [
  ['button', 'help.keyButton'],
  ['next-word', 'help.keyNext'],
  ['previous-word', 'help.keyPrevious'],
  ['open-desk', 'help.keyDesk'],
] as const satisfies readonly (readonly [ShortcutName, TextId])[];

const SETTINGS = [
  'help.settingGroup',
  'help.settingStep',
  'help.settingRules',
  'help.settingLook',
  'help.settingPrivate',
  'help.settingWords',
  'help.settingSequence',
  'help.settingKeep',
] as const satisfies readonly TextId[];

const CANNOT = [
  'help.cannotPdf',
  'help.cannotDrawn',
  'help.cannotFrame',
  'help.cannotField',
  'help.cannotBrowser',
  'help.cannotLanguage',
] as const satisfies readonly TextId[];

/** The sections of the page, in order. */
const SECTIONS = [
  ['figure', 'help.figure'],
  ['marks', 'help.marks'],
  ['settings', 'help.settings'],
  ['word', 'help.word'],
  ['keys', 'help.keys'],
  ['cannot', 'help.cannot'],
  ['trouble', 'help.trouble'],
  ['terms', 'help.terms'],
] as const satisfies readonly (readonly [string, TextId])[];

const TROUBLE = [
  'help.troubleButton',
  'help.troubleShare',
  'help.troubleWord',
  'help.troubleStuck',
] as const satisfies readonly TextId[];

/**
 * The help page: the marks, the settings, the card, the keys, the content that cannot be read, what to do when
 * something goes wrong, and the terms.
 */
export function HelpPage() {
  return (
    <div class="page help-page">
      <Masthead title={say('help.title')} page="help" />
      <nav class="help-contents" aria-label={say('help.contents')}>
        {SECTIONS.map(([id, title]) => (
          <a key={id} href={`#${id}`}>
            {say(title)}
          </a>
        ))}
        <a href="/welcome.html#guide-title">{say('help.firstSteps')}</a>
        <a href="/practice.html">{say('help.practice')}</a>
        <a href="/privacy.html">{say('help.privacy')}</a>
      </nav>
      <main class="help" tabIndex={-1}>
        <section aria-labelledby="figure">
          <h2 id="figure">{say('help.figure')}</h2>
          <p>{say('help.figureLead')}</p>
        </section>
        <section aria-labelledby="marks">
          <h2 id="marks">{say('help.marks')}</h2>
          <p>{say('help.marksLead')}</p>
          <MarkLegend />
          <p>{say('help.notCounted')}</p>
        </section>
        <Lines id="settings" title="help.settings" lines={SETTINGS} />
        <section aria-labelledby="word">
          <h2 id="word">{say('help.word')}</h2>
          <p>{say('help.wordLead')}</p>
          <img src="/guide/word.png" alt="" loading="lazy" />
          <p>{say('help.wordCounts')}</p>
        </section>
        <Keys />
        <Lines id="cannot" title="help.cannot" lines={CANNOT} />
        <section aria-labelledby="trouble">
          <h2 id="trouble">{say('help.trouble')}</h2>
          <ul class="help-list">
            {TROUBLE.map((line) => (
              <li key={line}>{say(line)}</li>
            ))}
            <li>
              {say('help.troubleDetails')} <CopyDetails />
            </li>
          </ul>
        </section>
        <section aria-labelledby="terms">
          <h2 id="terms">{say('help.terms')}</h2>
          <dl class="help-terms">
            {TERMS.map((term) => (
              <div key={term}>
                <dt>{say(`terms.${term}`)}</dt>
                <dd>{say(`terms.${term}Means`)}</dd>
              </div>
            ))}
          </dl>
        </section>
        <p class="quiet">{say('help.deference')}</p>
      </main>
    </div>
  );
}

interface LinesProps {
  readonly id: string;
  readonly title: 'help.settings' | 'help.cannot';
  readonly lines: typeof SETTINGS | typeof CANNOT;
}

/** A section of the page that is a list of sentences. */
function Lines({ id, title, lines }: LinesProps) {
  return (
    <section aria-labelledby={id}>
      <h2 id={id}>{say(title)}</h2>
      <ul class="help-list">
        {lines.map((line) => (
          <li key={line}>{say(line)}</li>
        ))}
      </ul>
    </section>
  );
}

/** Shows the keyboard shortcuts as they are set in the browser now. */
function Keys() {
  const loaded = useLoaded(loadShortcuts);
  const shortcuts = loaded instanceof LoadFault ? null : loaded;
  return (
    <section aria-labelledby="keys">
      <h2 id="keys">{say('help.keys')}</h2>
      <p>{say('help.keysLead')}</p>
      <table class="help-keys">
        <tbody>
          {COMMANDS.map(([command, text]) => (
            <tr key={command}>
              <th scope="row">{say(text)}</th>
              <td>{shortcuts && (shortcuts.get(command) || say('help.keyNone'))}</td>
            </tr>
          ))}
          <tr>
            <th scope="row">{say('help.keyCard')}</th>
            <td>{say('help.altClick')}</td>
          </tr>
          <tr>
            <th scope="row">{say('help.keyClose')}</th>
            <td>{say('help.escape')}</td>
          </tr>
        </tbody>
      </table>
    </section>
  );
}

/** Copies the version and the browser, for a fault report. */
function CopyDetails() {
  const details = listDetails([]).trim();
  const { copied, copy } = useCopied(details);
  return (
    <>
      <button type="button" class="plain" onClick={copy}>
        {say('help.copy')}
      </button>{' '}
      <span role="status">
        {copied === true && say('help.copied')}
        {copied === false && `${say('help.notCopied')} ${details}`}
      </span>
    </>
  );
}
