import type { Plot } from './plots.ts';

/**
 * A person or thing in a place. `moves` means that the person or thing goes there in the beat. Otherwise the person or
 * thing is there already.
 */
export interface Fact {
  readonly who: string;
  readonly moves: boolean;
  readonly where: string;
}

/** A piece of a beat's text: fixed words, or a slot for words. */
export type BeatPiece = string | { readonly slot: string };

export type Way = readonly BeatPiece[];

export interface Beat {
  readonly isOptional: boolean;
  readonly beginsParagraph: boolean;
  /** The ways to say the beat. The ways in `spare` are used where the group can read none of `ways`. */
  readonly ways: readonly Way[];
  readonly spare: readonly Way[];
  readonly facts: readonly Fact[];
}

/** Reads the beats of a plot. `ours` converts its words to a variety of English. */
export function compileBeats({ beats }: Pick<Plot, 'beats'>, ours: (text: string) => string): Beat[] {
  return beats
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .map((line) => {
      const [, signs = '', all = '', facts = ''] = /^([¶? ]*)(.*?)(?:\[(.*)\])?$/.exec(line)!;
      const [said = '', spare = ''] = all.split(' // ');
      return {
        isOptional: signs.includes('?'),
        beginsParagraph: signs.includes('¶'),
        ways: waysOf(said, ours),
        spare: waysOf(spare, ours),
        facts: facts.split(' ').filter(Boolean).flatMap(factsOf),
      };
    });
}

function waysOf(said: string, ours: (text: string) => string): Way[] {
  return said
    .split(' / ')
    .map((way) => piecesOf(way.trim(), ours))
    .filter((pieces) => pieces.length > 0);
}

/** Returns the words and the slots of a way. */
export function piecesOf(way: string, ours: (text: string) => string): BeatPiece[] {
  return way
    .split(/(\{[^}]*\})/)
    .filter((piece) => piece !== '')
    .map((piece) => (piece.startsWith('{') ? { slot: piece.slice(1, -1) } : ours(piece)));
}

function factsOf(fact: string): Fact[] {
  const [, names = '', sign, where = ''] = /^(.*?)([>@])(.*)$/.exec(fact) ?? [];
  return names.split(',').map((who) => ({ who, moves: sign === '>', where }));
}
