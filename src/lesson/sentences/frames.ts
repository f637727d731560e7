import { lateFrames } from './late-frames.ts';
import { plainFrames } from './plain-frames.ts';
import { verbFrames } from './verb-frames.ts';
import type { Vocabulary } from './vocabulary.ts';

/** A piece of a frame: fixed words, or a slot for words. */
export type Piece =
  | { readonly kind: 'words'; readonly text: string }
  | { readonly kind: 'slot'; readonly slot: Slot }
  /** A word that agrees with the subject: `has/have`; `be` for is, are, was or were. */
  | { readonly kind: 'agrees'; readonly forms: string };

/**
 * The article of the slot.
 * - `free`: any article
 * - `one`: `the`, without a plural
 * - `bare`: `the`, without a plural or an adjective
 * - `as-is`: the words as in the class
 * - `the-as-is`: `the`, then the words as in the class
 */
export interface Slot {
  readonly subject: boolean;
  readonly article: 'free' | 'a' | 'the' | 'one' | 'bare' | 'my' | 'as-is' | 'the-as-is';
  readonly of: string;
}

/** The forms of a verb; null for a form the group cannot read. */
export interface VerbForms {
  readonly base: string | null;
  readonly third: string | null;
  readonly past: string | null;
  readonly ing: string | null;
}

/** A way to make a sentence. The group can read every word in the frame. */
export interface Frame {
  /** The topic that the frames of a group share: `people`, `plain`. */
  readonly group: string;
  /** The class of the subject that acts; null for a plain frame. */
  readonly who: string | null;
  readonly verb: VerbForms | null;
  readonly pieces: readonly Piece[];
  readonly tail: 'none' | 'when' | 'how';
  /** Whether the sentence can have a word that practises the lesson's patterns. */
  readonly practises: boolean;
}

/** Returns the frames of the grammar that a group can read. */
export function readableFrames(vocabulary: Vocabulary): readonly Frame[] {
  const { ours, reads, readsForm, practises, nouns, phrases } = vocabulary;
  const inOurs = (piece: Piece): Piece =>
    piece.kind === 'words' ? { kind: 'words', text: ours(piece.text) } : piece;
  const fits = (piece: Piece): boolean => {
    if (piece.kind === 'words') return /^[ .?]*$/.test(piece.text) || reads(plain(piece.text));
    if (piece.kind === 'agrees') return true;
    const { of, article } = piece.slot;
    if (of === 'people' || of === 'person') return true;
    return (article.endsWith('as-is') ? phrases(of) : nouns(of)).length > 0;
  };
  const classPractises = new Map<string, boolean>();
  const mayPractise = (piece: Piece): boolean => {
    if (piece.kind !== 'slot') return piece.kind === 'words' && practises(plain(piece.text));
    const { of, article } = piece.slot;
    const key = `${article.endsWith('as-is')} ${of}`;
    const before = classPractises.get(key);
    if (before !== undefined) return before;
    const words = article.endsWith('as-is') ? phrases(of) : nouns(of).flatMap(({ one, many }) => [one, many]);
    const found = words.some((form) => form !== null && practises(form));
    classPractises.set(key, found);
    return found;
  };
  const verbal = verbLines.flatMap(({ who, forms, rest: written, tail }): Frame[] => {
    const [base = '', third = '', past = '', ing = ''] = forms.map(ours);
    const rest = written.map(inOurs);
    const verb = {
      base: reads(base) ? base : null,
      third: readsForm(third) ? third : null,
      past: reads(past) ? past : null,
      ing: readsForm(ing) ? ing : null,
    };
    const readable = Object.values(verb).filter((form) => form !== null);
    const some = who === 'people' || nouns(who).length > 0;
    if (!some || readable.length === 0 || !rest.every(fits)) return [];
    const focused = readable.some(practises) || rest.some(mayPractise);
    return [{ group: who, who, verb, pieces: rest, tail, practises: focused }];
  });
  const others = plainPieces.flatMap((written): Frame[] => {
    const pieces = written.map(inOurs);
    return pieces.every(fits)
      ? [{ group: 'plain', who: null, verb: null, pieces, tail: 'none', practises: pieces.some(mayPractise) }]
      : [];
  });
  return [...verbal, ...others];
}

function plain(text: string): string {
  return text.replace(/[.?]/g, '').trim();
}

const verbLines = Object.entries(verbFrames).flatMap(([who, lines]) =>
  lines.split('\n').flatMap((line) => {
    const [verb = '', rests] = line.trim().split(' | ');
    if (rests === undefined) return [];
    return rests.split(' ; ').map((rest) => ({
      who,
      forms: verb.split(' '),
      rest: piecesOf(rest.replace(/[~^]\s*$/, '').trim()),
      tail: /~\s*$/.test(rest)
        ? ('when' as const)
        : /\^\s*$/.test(rest)
          ? ('how' as const)
          : ('none' as const),
    }));
  }),
);

const plainPieces = [...plainFrames, ...lateFrames].map(piecesOf);

function piecesOf(text: string): Piece[] {
  return text
    .split(/(\{[^}]*\}|\[[^\]]*\])/)
    .filter((part) => part !== '')
    .map((part): Piece => {
      if (part.startsWith('[')) return { kind: 'agrees', forms: part.slice(1, -1) };
      if (!part.startsWith('{')) return { kind: 'words', text: part };
      const [, subject, article, same, of] = /^\{(S )?(?:(a|an|the|one|bare|my) )?(=)?(.*)\}$/.exec(part)!;
      const asIs = article ? ('the-as-is' as const) : ('as-is' as const);
      const plainArticle = article === 'an' ? 'a' : ((article ?? 'free') as Slot['article']);
      return {
        kind: 'slot',
        slot: { subject: subject !== undefined, article: same ? asIs : plainArticle, of: of! },
      };
    });
}
