import {
  BLOCK,
  backoffSlot,
  blockSlot,
  childSlot,
  LEVEL_STEP,
  LEVELS,
  LONG_LIST,
  levelSlot,
  type ModelHeader,
  parentSlot,
  SLOTS,
} from '../../analyze/guess/model-format.ts';
import { ORDER, type TrainedModel } from './train-model.ts';
import { createBitWriter } from './write-bits.ts';

/** Returns the model's file in the format of analyze/guess/model-format.ts. The same model gives the same bytes. */
export function writeModel(
  model: TrainedModel,
  tokens: ModelHeader['tokens'],
  weights: Int8Array,
): Uint8Array {
  const { grams, chance, backoff } = model;
  const children = childrenOf(model);
  const bits = createBitWriter(SLOTS);
  const levelOf = (gram: number): number => toLevel(grams.token[gram] === 0 ? 1e-9 : chance[gram]!);
  const queue: { readonly gram: number; readonly order: number }[] = [];
  for (const gram of children.get(0)!) {
    bits.level(levelSlot(0), levelOf(gram));
    queue.push({ gram, order: 1 });
  }
  for (const { gram, order } of queue) {
    if (order === ORDER) continue;
    const own = children.get(gram);
    bits.bit(parentSlot(order, levelOf(gram)), own ? 1 : 0);
    if (!own) continue;
    bits.level(backoffSlot(order), toLevel(backoff[gram]!));
    const bySuffix = new Map(own.map((child) => [grams.suffix[child]!, child]));
    const choices = children.get(grams.suffix[gram]!)!;
    for (let i = 0; i < choices.length; i++) {
      const suffix = choices[i]!;
      if (choices.length >= LONG_LIST && i % BLOCK === 0) {
        const some = choices.slice(i, i + BLOCK).some((choice) => bySuffix.has(choice));
        bits.bit(blockSlot(order, levelOf(suffix)), Number(some));
        if (!some) i += BLOCK - 1;
        if (!some) continue;
      }
      const child = bySuffix.get(suffix);
      bits.bit(childSlot(order, levelOf(suffix), choices.length), child === undefined ? 0 : 1);
      if (child === undefined) continue;
      bits.level(levelSlot(levelOf(suffix)), levelOf(child));
      queue.push({ gram: child, order: order + 1 });
    }
  }
  return pack({ tokens, weights: weights.length, order: ORDER }, queue.length + 1, weights, bits.end());
}

/** Returns, for each kept gram, the kept grams that continue it by one token, sorted by their last tokens. */
function childrenOf({ grams, kept }: TrainedModel): ReadonlyMap<number, readonly number[]> {
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

/** Returns the bytes of the file: the lengths, the head, the weights, then the bits. */
function pack(header: ModelHeader, nodes: number, weights: Int8Array, body: readonly number[]): Uint8Array {
  const head = new TextEncoder().encode(JSON.stringify(header));
  const out = new Uint8Array(8 + head.length + weights.length + body.length);
  const view = new DataView(out.buffer);
  view.setUint32(0, head.length, true);
  view.setUint32(4, nodes, true);
  out.set(head, 8);
  out.set(new Uint8Array(weights.buffer, weights.byteOffset, weights.length), 8 + head.length);
  out.set(body, 8 + head.length + weights.length);
  return out;
}

function toLevel(chance: number): number {
  return Math.max(0, Math.min(LEVELS - 1, Math.round(-Math.log(chance) / LEVEL_STEP)));
}
