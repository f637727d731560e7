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

const LISTS = [
  [
    'settings',
    'help.settings',
    [
      'help.settingGroup',
      'help.settingStep',
      'help.settingRules',
      'help.settingLook',
      'help.settingPrivate',
      'help.settingWords',
      'help.settingSequence',
      'help.settingKeep',
    ],
  ],
  [
    'cannot',
    'help.cannot',
    [
      'help.cannotPdf',
      'help.cannotDrawn',
      'help.cannotFrame',
      'help.cannotField',
      'help.cannotBrowser',
      'help.cannotLanguage',
    ],
  ],
] as const satisfies readonly (readonly [string, TextId, readonly TextId[]])[];

/** What the page has, in its order. */
const SECTIONS = [
  ['figure', 'help.figure'],
  ['marks', 'help.marks'],
  ['word', 'help.word'],
  ['terms', 'help.terms'],
  ['keys', 'help.keys'],
  ['settings', 'help.settings'],
  ['cannot', 'help.cannot'],
  ['trouble', 'help.trouble'],
] as const satisfies readonly (readonly [string, TextId])[];

const TROUBLE = [
  'help.troubleButton',
  'help.troubleShare',
  'help.troubleWord',
  'help.troubleStuck',
] as const satisfies readonly TextId[];

/** One page of help: the marks, the card, the keys, the settings, what cannot be read, and what to do when something is wrong. */
export function HelpPage() {
  return (
    <div class="page">
      <Masthead title={say('help.title')} page="help" />
      <main class="help" tabIndex={-1}>
        <p class="help-links">
          <a class="plain" href="/welcome.html#guide-title">
            {say('help.firstSteps')}
          </a>
          <a class="plain" href="/practice.html">
            {say('help.practice')}
          </a>
          <a class="plain" href="/privacy.html">
            {say('help.privacy')}
          </a>
        </p>
        <nav class="help-links" aria-label={say('help.contents')}>
          {SECTIONS.map(([id, title]) => (
            <a key={id} href={`#${id}`}>
              {say(title)}
            </a>
          ))}
        </nav>
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
        <section aria-labelledby="word">
          <h2 id="word">{say('help.word')}</h2>
          <p>{say('help.wordLead')}</p>
          <img src="/guide/word.png" alt="" loading="lazy" />
          <p>{say('help.wordCounts')}</p>
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
        <Keys />
        {LISTS.map(([id, title, lines]) => (
          <section key={id} aria-labelledby={id}>
            <h2 id={id}>{say(title)}</h2>
            <ul class="help-list">
              {lines.map((line) => (
                <li key={line}>{say(line)}</li>
              ))}
            </ul>
          </section>
        ))}
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
        <p class="quiet">{say('help.deference')}</p>
      </main>
    </div>
  );
}

/** The keys as the browser has them now. */
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

/** Copies the version and the browser, for whoever reports a fault. */
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
