import { type ImportedItem, importSequence, type WordAnalyzer } from '../../src/analyze/index.ts';
import { findText, type ReadClause, readMeaning, spellOut, verdictOf } from './annotated-text.ts';

/** A step as its author marked it, beside the step in which it was found. */
export interface ScoredStep {
  readonly title: string;
  /**
   * The title of the step in which the clauses of this step were found. Null if they were found in several steps, or in
   * one step together with others.
   */
  readonly found: string | null;
  readonly titled: boolean;
}

export interface ScoredText {
  readonly steps: readonly ScoredStep[];
  readonly clauses: readonly ReadClause[];
  /** Items outside every clause that teach something nevertheless. */
  readonly strays: readonly ImportedItem[];
  /** Items outside every clause that the teacher would be asked about. */
  readonly askedBesides: readonly ImportedItem[];
}

interface Piece {
  readonly text: string;
  /** Null for a piece of a title that is no clause. */
  readonly meaning: string | null;
  readonly title: boolean;
  readonly start: number;
  readonly end: number;
  readonly step: number;
  readonly items: ImportedItem[];
  readonly foundIn: Set<number>;
}

/**
 * Scores an annotated text. Its clauses are written `⟦clause => meaning⟧`. A step begins with `⟦¶title⟧` or `⟦¶title =>
 * meaning⟧`. If several cells make up the title, each has its own mark on the same line. Text outside the clauses
 * teaches nothing.
 */
export function scoreSteps(annotated: string, engine?: WordAnalyzer): ScoredText {
  const { pasted, pieces } = readPieces(annotated);
  const imported = importSequence(pasted, {}, [], engine).steps;
  const strays: ImportedItem[] = [];
  const askedBesides: ImportedItem[] = [];
  let at = 0;
  imported.forEach((step, stepPlace) => {
    for (const item of step.items) {
      const place = findText(pasted, item.text, at);
      const { start, end } = place ?? { start: -1, end: -1 };
      if (place !== null) at = end;
      // A name and the clause below it may be one item.
      const shared = pieces.map((piece) =>
        start < 0 || piece.meaning === null ? 0 : Math.min(piece.end, end) - Math.max(piece.start, start),
      );
      const best = Math.max(0, ...shared);
      const piece = best > 0 ? pieces[shared.indexOf(best)]! : undefined;
      if (piece !== undefined) {
        piece.items.push(item);
        piece.foundIn.add(stepPlace);
      } else if (item.patterns.length + item.bySight.length > 0) strays.push(item);
      else if (item.status === 'unknown') askedBesides.push(item);
    }
  });
  const clauses = pieces.flatMap(({ text, meaning, title, step, items, foundIn }): ReadClause[] => {
    if (meaning === null) return [];
    const read = readMeaning(items);
    const beside = pieces.filter((piece) => piece.step === step && !piece.title);
    const listed = new Set(beside.flatMap((piece) => spellOut(piece.meaning ?? '').split(/\s+/)));
    // A name may repeat the letters of its step, as "Long e" does beside `ee, ea`. Such a name changes nothing and is
    // right.
    const names = title || meaning.split('||').some((one) => one.trim() === '-');
    const own = new Set(spellOut(meaning).split(/\s+/));
    const again =
      names && items.length > 0 && read.split(' ').every((id) => listed.has(id) && (title || !own.has(id)));
    const found = [...foundIn].map((place) => imported[place]!.title).join(' & ');
    // A name that was left out is right if the rest of its step teaches everything that the name may mean: "Soft c"
    // above `ce, ci`. The same holds for part of a name: "Short vowels + digraphs" beside `sh, ch`.
    const named =
      items.length > 0 &&
      (read === '-' || title) &&
      [...foundIn].some((place) => teaches(imported[place]!, meaning, read));
    return [
      { step: found, text, meaning, read, verdict: again || named ? 'right' : verdictOf(items, meaning) },
    ];
  });
  return { steps: scoreTitles(pieces, imported), clauses, strays, askedBesides };
}

/** Returns whether a step teaches everything that a clause may mean, and the clause nothing else. */
function teaches(
  { items }: { readonly items: readonly ImportedItem[] },
  meaning: string,
  read: string,
): boolean {
  const taught = new Set(items.flatMap(({ patterns }) => patterns));
  const own = read === '-' ? [] : read.split(' ');
  return meaning
    .split('||')
    .map((one) => spellOut(one.trim()).split(/\s+/))
    .some((ids) => ids.every((id) => taught.has(id)) && own.every((id) => ids.includes(id)));
}

function scoreTitles(pieces: readonly Piece[], imported: readonly { title: string }[]): ScoredStep[] {
  const count = (pieces.at(-1)?.step ?? -1) + 1;
  const places = Array.from({ length: count }, (_, step) => {
    const own = pieces.filter((piece) => piece.step === step);
    return new Set(own.flatMap(({ foundIn }) => [...foundIn]));
  });
  let last = -1;
  return places.map((found, step) => {
    const titles = pieces
      .filter((piece) => piece.step === step && piece.title)
      .map(({ text }) => plain(text));
    const says = (place: number) => titles.every((title) => plain(imported[place]!.title).includes(title));
    if (found.size === 0) {
      const place = imported.findIndex((_, i) => i > last && says(i));
      if (place >= 0) found.add(place);
    }
    const place = found.size === 1 ? [...found][0]! : -1;
    const alone = place >= 0 && !places.some((other, i) => i !== step && other.has(place));
    if (alone) last = place;
    return {
      title: titles.join(' · '),
      found: alone ? imported[place]!.title : null,
      titled: alone && says(place),
    };
  });
}

function plain(title: string): string {
  return title
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}

function readPieces(annotated: string): { pasted: string; pieces: Piece[] } {
  const pieces: Piece[] = [];
  let pasted = '';
  let after = 0;
  let titleLine = -1;
  let step = -1;
  for (const found of annotated.matchAll(/⟦(¶?)([^⟧]+?)(?: => ([^⟧]+))?⟧/gu)) {
    pasted += annotated.slice(after, found.index);
    const [whole, mark, text = '', meaning] = found;
    const line = annotated.slice(0, found.index).split('\n').length;
    if (mark !== '') {
      if (line !== titleLine) step += 1;
      titleLine = line;
    }
    pieces.push({
      text,
      meaning: meaning ?? null,
      title: mark !== '',
      start: pasted.length,
      end: pasted.length + text.length,
      step,
      items: [],
      foundIn: new Set(),
    });
    pasted += text;
    after = found.index + whole.length;
  }
  return { pasted: pasted + annotated.slice(after), pieces };
}
