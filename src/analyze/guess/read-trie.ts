import { backoffKind, childrenKind, levelKind, type ModelHeader, skippedKind } from './model-format.ts';
import type { CodeReader } from './read-codes.ts';

/**
 * The runs of tokens that a model knows. A node is a run that the model gives a level to. A state is a run that has a
 * continuation. Nodes and states have numbers of their own, and state 0 is the empty run.
 */
export interface Trie {
  /** The last token of each node. */
  readonly token: Uint16Array;
  readonly level: Uint8Array;
  /** Returns the state of a node, or 0 if the node has no continuation. */
  stateOf(node: number): number;
  /** Returns the first child of a state. The children end at the first child of the next state. */
  firstOf(state: number): number;
  /**
   * The fallback of each state, for a token that is none of its children: the number of the state without its farthest
   * token, times 256, plus the backoff level.
   */
  readonly fallback: Int32Array;
}

/** The number of a state fits in the bits that a fallback has beside the level. */
const MOST_STATES = 1 << 23;

/** Reads a trie of so many nodes, including the empty run. Returns null if the codes do not make a trie. */
export function readTrie(
  codes: CodeReader,
  nodes: number,
  tokens: number,
  { order, states }: Pick<ModelHeader, 'order' | 'states'>,
): Trie | null {
  if (!(states <= nodes && states <= MOST_STATES && tokens < nodes && tokens * NEIGHBOURS <= 0x1_0000))
    return null;
  const token = new Uint16Array(nodes);
  const level = new Uint8Array(nodes);
  const fallback = new Int32Array(states);
  const { stateOf, addState } = numberStates(nodes);
  const { firstOf, setFirst } = createFirsts(states + 1);
  /** Each node's run without its farthest token. Only states need it later. */
  const shorter = new Int32Array(nodes);
  let made = 1;
  setFirst(0, made);
  for (; made <= tokens; made++) {
    token[made] = made - 1;
    level[made] = codes.byte(levelKind(0, tokens));
  }
  /** Reads the children of a node, which are among the choices from `first` on. Returns false if they do not fit. */
  function readChildren(children: number, first: number, choices: number): boolean {
    let choice = first;
    let spare = choices - children;
    if (spare < 0 || made + children > nodes) return false;
    for (let left = children; left > 0; left--) {
      const skipped = spare === 0 ? 0 : codes.number(skippedKind(spare, left));
      if (skipped > spare) return false;
      spare -= skipped;
      choice += skipped;
      token[made] = token[choice]!;
      shorter[made] = choice;
      level[made] = codes.byte(levelKind(level[choice]!, children));
      made++;
      choice++;
    }
    return true;
  }

  let state = 1;
  setFirst(state, made);
  let node = 1;
  for (let length = 1; length < order; length++) {
    for (const end = made; node < end; node++) {
      const from = stateOf(shorter[node]!);
      if (from === 0 && length > 1) continue;
      const first = firstOf(from);
      const choices = firstOf(from + 1) - first;
      const children = codes.number(childrenKind(choices));
      if (children === 0) continue;
      if (state === states) return null;
      addState(node);
      fallback[state] = (from << 8) | codes.byte(backoffKind(length));
      if (!readChildren(children, first, choices)) return null;
      state++;
      setFirst(state, made);
    }
  }
  return made === nodes && state === states ? { token, level, stateOf, firstOf, fallback } : null;
}

/**
 * Creates the list of nodes that are states. States are numbered from 1 on in the order of their nodes, so one bit for
 * each node is enough: the number of a state is the number of states up to its node.
 */
function numberStates(nodes: number): { stateOf(node: number): number; addState(node: number): void } {
  const bits = new Int32Array((nodes >> 5) + 1);
  /** For each group of 32 nodes with a state: the number of states before the group. */
  const before = new Int32Array(bits.length);
  let states = 0;
  return {
    stateOf(node) {
      const group = bits[node >> 5]! << (31 - (node & 31));
      return group < 0 ? before[node >> 5]! + countBits(group) : 0;
    },
    addState(node) {
      if (bits[node >> 5] === 0) before[node >> 5] = states;
      bits[node >> 5]! |= 1 << (node & 31);
      states++;
    },
  };
}

/** Returns how many of the 32 bits are set. */
function countBits(bits: number): number {
  const pairs = bits - ((bits >>> 1) & 0x55555555);
  const fours = (pairs & 0x33333333) + ((pairs >>> 2) & 0x33333333);
  return Math.imul((fours + (fours >>> 4)) & 0x0f0f0f0f, 0x01010101) >>> 24;
}

/**
 * The number of neighbouring states that share one base index for their first children. With 2,048 tokens or less, these
 * states have fewer than 65,536 children together.
 */
const NEIGHBOURS = 32;

/** Creates a list of numbers that never decrease from one state to the next. It takes half the memory of a plain list. */
function createFirsts(size: number): {
  firstOf(state: number): number;
  setFirst(state: number, first: number): void;
} {
  const bases = new Int32Array(Math.ceil(size / NEIGHBOURS));
  const beyond = new Uint16Array(size);
  return {
    firstOf: (state) => bases[state >>> 5]! + beyond[state]!,
    setFirst(state, first) {
      if (state % NEIGHBOURS === 0) bases[state >>> 5] = first;
      beyond[state] = first - bases[state >>> 5]!;
    },
  };
}
