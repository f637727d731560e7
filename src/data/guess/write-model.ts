import {
  backoffKind,
  childrenKind,
  HEADER_KIND,
  KINDS,
  LEVEL_STEP,
  LEVELS,
  levelKind,
  type ModelHeader,
  skippedKind,
  WEIGHT_KIND,
} from '../../analyze/guess/model-format.ts';
import { ORDER, type TrainedModel } from './train-model.ts';
import { type CodeWriter, createCodeWriter } from './write-codes.ts';

/** Returns the model's file in the format of analyze/guess/model-format.ts. The same model gives the same bytes. */
export function writeModel(
  model: TrainedModel,
  tokens: ModelHeader['tokens'],
  weights: Int8Array,
): Uint8Array {
  const children = childrenOf(model);
  const trie = createCodeWriter(KINDS);
  const header: ModelHeader = { tokens, weights: weights.length, order: ORDER, states: children.size };
  const head = new TextEncoder().encode(JSON.stringify(header));
  for (const byte of head) trie.byte(HEADER_KIND, byte);
  for (const weight of weights) trie.byte(WEIGHT_KIND, weight & 255);
  const nodes = writeTrie(trie, model, children);
  const body = trie.end();
  const out = new Uint8Array(8 + body.length);
  const view = new DataView(out.buffer);
  view.setUint32(0, nodes, true);
  view.setUint32(4, head.length, true);
  out.set(body, 8);
  return out;
}

/** The children of each gram that has some, in the order of their last tokens. */
type Children = ReadonlyMap<number, readonly number[]>;

/** Writes all kept grams and returns their number, including the empty one. */
function writeTrie(codes: CodeWriter, { grams, chance, backoff }: TrainedModel, children: Children): number {
  const levelOf = (gram: number): number => toLevel(grams.token[gram] === 0 ? 1e-9 : chance[gram]!);
  const queue: { readonly gram: number; readonly length: number }[] = [];
  const roots = children.get(0)!;
  for (const gram of roots) {
    codes.byte(levelKind(0, roots.length), levelOf(gram));
    queue.push({ gram, length: 1 });
  }
  for (const { gram, length } of queue) {
    const choices = children.get(grams.suffix[gram]!);
    if (length === ORDER || !choices) continue;
    const own = children.get(gram) ?? [];
    codes.number(childrenKind(choices.length), own.length);
    if (own.length === 0) continue;
    codes.byte(backoffKind(length), toLevel(backoff[gram]!));
    let next = 0;
    let spare = choices.length - own.length;
    for (const [i, child] of own.entries()) {
      const suffix = grams.suffix[child]!;
      const skipped = choices.indexOf(suffix, next) - next;
      if (spare > 0) codes.number(skippedKind(spare, own.length - i), skipped);
      codes.byte(levelKind(levelOf(suffix), own.length), levelOf(child));
      queue.push({ gram: child, length: length + 1 });
      spare -= skipped;
      next += skipped + 1;
    }
  }
  return queue.length + 1;
}

/** Returns, for each kept gram, the kept grams that continue it by one token, sorted by their last tokens. */
function childrenOf({ grams, kept }: TrainedModel): Children {
  const children = new Map<number, number[]>();
  for (let order = 1; order <= ORDER; order++) {
    for (const gram of grams.ofOrder(order)) {
      if (kept[gram] === 0) continue;
      const siblings = children.get(grams.parent[gram]!);
      if (siblings) siblings.push(gram);
      else children.set(grams.parent[gram]!, [gram]);
    }
  }
  for (const siblings of children.values()) siblings.sort((a, b) => grams.token[a]! - grams.token[b]!);
  return children;
}

function toLevel(chance: number): number {
  return Math.max(0, Math.min(LEVELS - 1, Math.round(-Math.log(chance) / LEVEL_STEP)));
}
