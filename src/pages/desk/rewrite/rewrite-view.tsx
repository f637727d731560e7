import { say } from '../../../wording/say.ts';
import type { PassageWord, TextEdit } from '../passage-editor.ts';
import { sayDecimal } from '../say-decimal.ts';
import { findAgain, listSentences, type PlacedSentence } from './list-sentences.ts';
import { type RewriteInput, type Rewriting, type Rewritten, useRewriting } from './use-rewriting.ts';
import '../plan/plan.css';
import './rewrite.css';

interface RewriteViewProps extends RewriteInput {
  /** The word the cursor is on. */
  readonly word: PassageWord | null;
  readonly onEdit: (edits: readonly TextEdit[]) => void;
}

/** Rewrites sentences with the language model of the browser, where there is one; nothing is changed before the teacher chooses. */
export function RewriteView({ word, onEdit, ...input }: RewriteViewProps) {
  const { rewriting, look, start, cancel, remove } = useRewriting(input);
  const { model, working, found } = rewriting;
  const { text, shade, preTeach } = input;
  const here = word && listSentences(text).find(({ from, to }) => from <= word.from && word.to <= to);

  const use = (rewritten: Rewritten, chosen: string): void => {
    const at = findAgain(text, rewritten.sentence);
    if (at !== null) onEdit([{ from: at, to: at + rewritten.sentence.text.length, text: chosen }]);
    remove(rewritten);
  };
  const isHard = ({ text: sentence }: PlacedSentence): boolean =>
    shade(sentence).words.some(
      ({ start: from, end, standing }) =>
        standing === 'beyond' && !preTeach.includes(sentence.slice(from, end).toLowerCase()),
    );
  const hasModel = model !== null && model !== 'none' && model !== 'unavailable';
  return (
    <details class="plan" onToggle={(event) => event.currentTarget.open && model === null && look()}>
      <summary>{say('desk.rewriteWithModel')}</summary>
      <div class="plan-body">
        {model !== null && !hasModel && <p class="quiet">{say('desk.noModelHere')}</p>}
        {hasModel && (
          <>
            <p class="quiet">{say('desk.aboutModel')}</p>
            {model !== 'available' && <p class="quiet">{say('desk.modelToDownload')}</p>}
            <p class="row">
              <button
                type="button"
                class="action"
                disabled={working !== null || !here}
                onClick={() => here && void start([here])}
              >
                {say('desk.rewriteSentence')}
              </button>
              <button
                type="button"
                class="action"
                disabled={working !== null}
                onClick={() => void start(listSentences(text).filter(isHard))}
              >
                {say('desk.rewriteForGroup')}
              </button>
              {working && (
                <button type="button" class="plain" onClick={cancel}>
                  {say('desk.cancelRewriting')}
                </button>
              )}
            </p>
            {!here && <p class="quiet">{say('desk.putCursor')}</p>}
            <div role="status">{describe(rewriting)}</div>
            {found.map((rewritten) => (
              <Candidates
                key={rewritten.sentence.from}
                rewritten={rewritten}
                onUse={(chosen) => use(rewritten, chosen)}
                onKeep={() => remove(rewritten)}
              />
            ))}
          </>
        )}
      </div>
    </details>
  );
}

function describe({ working, download, found, isDone, asked, fault }: Rewriting) {
  if (fault !== null) return <p class="note note-wrong">{fault}</p>;
  if (download && working) {
    const percent = Math.floor(download.share * 100);
    return (
      <p class="rewrite-download">
        <progress max={1} value={download.share} aria-label={say('desk.downloadingModel', { percent })} />{' '}
        {download.bytes === null
          ? say('desk.downloadingModel', { percent })
          : say('desk.downloadingModelOf', { percent, size: Math.round(download.bytes / 1e6) })}
      </p>
    );
  }
  if (working) return <p>{say('desk.rewriting', working)}</p>;
  if (!isDone) return null;
  if (asked === 0) return <p>{say('desk.nothingToRewrite')}</p>;
  return <p>{found.length > 0 ? say('desk.rewritten', { count: found.length }) : say('desk.noRewriting')}</p>;
}

interface CandidatesProps {
  readonly rewritten: Rewritten;
  readonly onUse: (text: string) => void;
  readonly onKeep: () => void;
}

/** The rewritings of one sentence, each to be taken. */
function Candidates({ rewritten: { sentence, candidates }, onUse, onKeep }: CandidatesProps) {
  return (
    <section class="rewritten" aria-label={say('desk.rewritingOf', { sentence: sentence.text })}>
      <p class="quiet" lang="en">
        {sentence.text}
      </p>
      <ul>
        {candidates.map(({ text, readable }) => (
          <li key={text}>
            <span lang="en" class="rewritten-text">
              {text}
            </span>{' '}
            <span class="quiet">{say('desk.percent', { percent: sayDecimal(readable * 100, 0) })}</span>{' '}
            <button type="button" class="plain" onClick={() => onUse(text)}>
              {say('desk.useRewriting')}
            </button>
          </li>
        ))}
      </ul>
      <button type="button" class="plain" onClick={onKeep}>
        {say('desk.dismissRewriting')}
      </button>
    </section>
  );
}
