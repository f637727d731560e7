import { DRAFT_SCHEMA, draftPrompt, LONGEST_PARAGRAPH, MOST_PARAGRAPHS } from './draft-prompt.ts';
import type { DraftTask, DraftTools } from './draft-task.ts';
import { createDraftJudge, type Draft, type JudgedDraft } from './judge-draft.ts';
import { isPlainText, ownValue, readList } from './read-answer.ts';
import { SENT_BACK } from './rewrite-sentence.ts';
import type { AskModel } from './rewrite-task.ts';

/** The number of drafts of one answer that are judged. */
const MOST_DRAFTS = 4;
/** The number of words for the step from which more count for nothing. */
const PRACTISED = 8;
/** The number of words for the step that one word of the topic counts as much as. */
const TOPIC = 4;

/**
 * Returns a draft that the engine accepts: every word is readable for the group and fit for children, and nothing is in
 * it that was not given. Returns null where the model wrote none. Drafts with faults are sent back to the model at
 * most three times. Rejects when the model rejects or the signal is aborted.
 */
export async function writeDraft(
  task: DraftTask,
  tools: DraftTools,
  ask: AskModel,
  signal: AbortSignal,
): Promise<JudgedDraft | null> {
  const judge = createDraftJudge(task, tools);
  const avoid = new Set<string>();
  let tried: JudgedDraft | null = null;
  for (let round = 0; round <= SENT_BACK; round++) {
    signal.throwIfAborted();
    const answer = await ask(draftPrompt(task, [...avoid], tried), DRAFT_SCHEMA, signal);
    signal.throwIfAborted();
    const judged = readDrafts(answer).map(judge);
    const worth = ({ practised, used }: JudgedDraft): number =>
      Math.min(practised, PRACTISED) + TOPIC * used.length;
    const [best] = judged
      .filter(({ faults }) => faults.length === 0)
      .sort((one, other) => worth(other) - worth(one));
    if (best) return best;
    // The draft that is nearest is mended. Without any, the same question would give the same answer.
    const missing = ({ faults, hard }: JudgedDraft): number => faults.length + hard.length;
    tried = judged.sort((one, other) => missing(one) - missing(other))[0] ?? null;
    if (!tried) return null;
    for (const { hard } of judged) for (const word of hard) avoid.add(word);
  }
  return null;
}

/** Returns the drafts in a model's answer. A draft that is not plain paragraphs of sentences is left out. */
export function readDrafts(answer: unknown): Draft[] {
  return readList(answer, 'drafts')
    .slice(0, MOST_DRAFTS)
    .flatMap((draft) => {
      const title = ownValue(draft, 'title');
      const paragraphs = ownValue(draft, 'paragraphs');
      if (!Array.isArray(paragraphs) || !paragraphs.every((each) => typeof each === 'string')) return [];
      const lines = paragraphs
        .flatMap((each: string) => each.split(/\n+/))
        .map((line) => inPrint(line.normalize('NFC').trim()))
        .filter((line) => line !== '');
      const isPlain = lines.every((line) => line.length <= LONGEST_PARAGRAPH && isPlainText(line));
      if (lines.length === 0 || lines.length > MOST_PARAGRAPHS || !isPlain) return [];
      return [
        {
          title: typeof title === 'string' ? inPrint(title.trim()).replace(/\.$/, '') : '',
          text: lines.join('\n'),
        },
      ];
    });
}

/** Sets the marks of print for typed ones: "I'm here" becomes “I’m here”. */
function inPrint(text: string): string {
  return text
    .replace(/(^|[\s(])"/g, '$1“')
    .replaceAll('"', '”')
    .replaceAll("'", '’')
    .replace(/\s+/g, ' ');
}
