import { compileGroup, createJudge } from '../../analyze/index.ts';
import type { Group, Sequence } from '../../analyze/types.ts';
import { loadEngine } from '../../host/data/load-engine.ts';
import { loadWordBank } from '../../host/data/load-word-bank.ts';
import { type BrowserModel, ModelFault } from '../../host/language-model.ts';
import { withinSequence } from '../../host/store/move-group.ts';
import {
  type BegunPassage,
  beginPassage,
  drawStory,
  FEWEST_WORDS,
  MOST_WORDS,
} from '../../lesson/begin-passage/index.ts';
import { createKnownWords, createPicker, findFocus } from '../../lesson/index.ts';
import { createShader, shadeText } from '../../passage/shade-line.ts';
import {
  type DraftTask,
  type DraftTools,
  type JudgedDraft,
  LONGEST_SENTENCE,
  writeDraft,
} from '../../rewrite/index.ts';
import { say } from '../../wording/say.ts';

/** The wishes for a draft. The same `version` gives the same draft, or the same story to the model. */
export interface DraftWish {
  readonly group: Group;
  readonly sequence: Sequence | null;
  /** Words that the teacher typed, in lower case. */
  readonly topic: readonly string[];
  readonly version: number;
}

/** The most words of the group that the model is given, and the fewest when it has little room. Our own figures. */
const MOST_GIVEN = 800;
const FEWEST_GIVEN = 100;

/** Writes a draft of a passage for a group; returns null if the group can read too few words. */
export async function beginDraft(wish: DraftWish): Promise<BegunPassage | null> {
  const { known, ...rest } = await prepare(wish);
  return beginPassage(known, rest, createPicker(wish.version, 'begin a passage'));
}

/**
 * Has the browser's model write a draft. Returns `little` if the group can read too few words, and `none` if no draft
 * passed. Rejects with `ModelFault`, or with the reason of the signal.
 */
export async function draftByModel(
  wish: DraftWish,
  opening: Promise<BrowserModel>,
  signal: AbortSignal,
): Promise<JudgedDraft | 'little' | 'none'> {
  const { known, judge, ...rest } = await prepare(wish);
  const story = drawStory(known, rest, createPicker(wish.version, 'begin a passage'));
  if (!story) return 'little';
  const shader = createShader(judge);
  const tools: DraftTools = { ...story, read: (text) => shadeText(text, shader(text)) };
  const task: DraftTask = { ...story, fewest: FEWEST_WORDS, most: MOST_WORDS, longest: LONGEST_SENTENCE };
  for (let most = MOST_GIVEN; most >= FEWEST_GIVEN; most /= 2) {
    try {
      const model = await opening;
      const words = story.words.slice(0, most);
      return (await writeDraft({ ...task, words }, tools, model.ask, signal)) ?? 'none';
    } catch (error) {
      // As many words are given as the model has room for.
      if (!(error instanceof ModelFault && error.isTooLong)) throw error;
    }
  }
  throw new ModelFault(say('desk.modelHasNoRoom'));
}

async function prepare({ group: given, sequence, topic }: DraftWish) {
  const [engine, bank] = await Promise.all([loadEngine(), loadWordBank()]);
  const group = withinSequence(given, sequence);
  const judge = createJudge(engine, compileGroup(group, sequence));
  const known = createKnownWords(bank, engine)(judge);
  return { known, judge, names: group.names, focus: findFocus(group, sequence, known.knows), topic };
}
