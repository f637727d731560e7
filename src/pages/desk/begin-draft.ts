import { compileGroup, createJudge } from '../../analyze/index.ts';
import type { Group, Sequence } from '../../analyze/types.ts';
import { loadEngine } from '../../host/data/load-engine.ts';
import { loadWordBank } from '../../host/data/load-word-bank.ts';
import { withinSequence } from '../../host/store/move-group.ts';
import { type BegunPassage, beginPassage } from '../../lesson/begin-passage/index.ts';
import { createKnownWords, createPicker, findFocus } from '../../lesson/index.ts';

/**
 * Writes a draft of a passage for a group; returns null if the group can read too few words. The same `version` gives
 * the same draft.
 */
export async function beginDraft(
  given: Group,
  sequence: Sequence | null,
  topic: readonly string[],
  version: number,
): Promise<BegunPassage | null> {
  const [engine, bank] = await Promise.all([loadEngine(), loadWordBank()]);
  const group = withinSequence(given, sequence);
  const known = createKnownWords(bank, engine)(createJudge(engine, compileGroup(group, sequence)));
  const focus = findFocus(group, sequence, known.knows);
  return beginPassage(known, { names: group.names, focus, topic }, createPicker(version, 'begin a passage'));
}
