import { say } from '../../../wording/say.ts';
import type { PassageWord } from '../passage-editor.ts';
import { listSentences, type PlacedSentence } from './list-sentences.ts';
import { type RewriteInput, type Rewriting, useRewriting } from './use-rewriting.ts';
import '../plan/plan.css';
import './rewrite.css';

interface RewriteViewProps extends RewriteInput {
  /** The word at the cursor. */
  readonly word: PassageWord | null;
}

/**
 * Rewrites sentences with the language model of the browser, where there is one. The rewritings become part of the
 * plan.
 */
export function RewriteView({ word, ...input }: RewriteViewProps) {
  const { rewriting, look, start, cancel } = useRewriting(input);
  const { model, working } = rewriting;
  const { text, shade, preTeach } = input;
  const here = word && listSentences(text).find(({ from, to }) => from <= word.from && word.to <= to);

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
