import { say } from '../../../wording/say.ts';
import { CancelButton, ModelPart } from '../model/model-part.tsx';
import type { PassageWord } from '../passage-editor.ts';
import { listSentences, type PlacedSentence } from './list-sentences.ts';
import { type RewriteInput, type Rewriting, useRewriting } from './use-rewriting.ts';

interface RewriteViewProps extends RewriteInput {
  /** The word at the cursor. */
  readonly word: PassageWord | null;
}

/**
 * Rewrites sentences with the language model of the browser, where there is one. The rewritings become part of the
 * plan.
 */
export function RewriteView({ word, ...input }: RewriteViewProps) {
  const { rewriting, user, start } = useRewriting(input);
  const { isWorking } = user.work;
  const { text, shade, preTeach } = input;
  // Without a model nothing of this is shown.
  const here =
    word && user.work.model && listSentences(text).find(({ from, to }) => from <= word.from && word.to <= to);

  const isHard = ({ text: sentence }: PlacedSentence): boolean =>
    shade(sentence).words.some(
      ({ start: from, end, standing }) =>
        standing === 'beyond' && !preTeach.includes(sentence.slice(from, end).toLowerCase()),
    );
  return (
    <ModelPart
      title={say('desk.rewriteWithModel')}
      about={say('desk.aboutModel')}
      user={user}
      says={describe(rewriting, isWorking)}
    >
      <p class="row">
        <button
          type="button"
          class="action"
          disabled={isWorking || !here}
          onClick={() => here && void start([here])}
        >
          {say('desk.rewriteSentence')}
        </button>
        <button
          type="button"
          class="action"
          disabled={isWorking}
          onClick={() => void start(listSentences(text).filter(isHard))}
        >
          {say('desk.rewriteForGroup')}
        </button>
        <CancelButton user={user} />
      </p>
      {!here && <p class="quiet">{say('desk.putCursor')}</p>}
    </ModelPart>
  );
}

function describe({ number, asked, found, isDone }: Rewriting, isWorking: boolean) {
  if (isWorking) return <p>{say('desk.rewriting', { number, all: asked })}</p>;
  if (!isDone) return null;
  if (asked === 0) return <p>{say('desk.nothingToRewrite')}</p>;
  return <p>{found.length > 0 ? say('desk.rewritten', { count: found.length }) : say('desk.noRewriting')}</p>;
}
