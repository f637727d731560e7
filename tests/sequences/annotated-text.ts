import { type ImportedItem, importSequence, type WordAnalyzer } from '../../src/analyze/index.ts';

/** The result of comparing the reading of a clause with the meaning that a teacher gives. */
export type Verdict = 'right' | 'asked' | 'wrong but sure' | 'wrong guess';

export interface ReadClause {
  readonly step: string;
  readonly text: string;
  readonly meaning: string;
  readonly read: string;
  readonly verdict: Verdict;
}

/** Lists that clauses refer to by one name. */
const SETS: Readonly<Record<string, string>> = {
  '@shorts': 'short-a short-e short-i short-o short-u',
  '@longs': 'long-a long-e long-i long-o long-u-yoo long-u-oo',
  '@openlongs': 'type-open long-a long-e long-i long-o long-u-yoo long-u-oo',
  '@vce': 'a_e e_e i_e o_e u_e-oo u_e-yoo',
  '@ed': 'suffix-ed-t suffix-ed-d suffix-ed-id',
  '@schwa': 'schwa-a schwa-e schwa-i schwa-o schwa-u weak-e',
  '@lblends': 'start-bl start-cl start-fl start-gl start-pl start-sl',
  '@rblends': 'start-br start-cr start-dr start-fr start-gr start-pr start-tr',
  '@starts':
    '@lblends @rblends start-thr start-shr start-sc start-sk start-sm start-sn start-sp start-st start-sw start-tw start-scr start-spl start-spr start-squ start-str',
  '@ends':
    'end-ft end-ld end-lf end-lk end-lm end-lp end-lt end-mp end-nd end-nt end-nch end-pt end-ct end-xt end-sk end-sp end-st end-nth end-lch end-dth end-three',
  '@alphabet': 'b c d f g h j k l m n p r s t v w x y z qu short-a short-e short-i short-o short-u',
};

/**
 * Reads a text in which each clause is written `⟦clause => meaning⟧`. Returns the importer’s reading of every clause,
 * beside the meaning that its author gives. A meaning is a set of patterns and `words: …`, `-` for nothing to teach, or
 * `?` for a clause that has to be asked about. `||` separates meanings that are equally good.
 */
export function readAnnotated(annotated: string, engine?: WordAnalyzer): readonly ReadClause[] {
  const clauses: { text: string; meaning: string; start: number; end: number; items: ImportedItem[] }[] = [];
  let pasted = '';
  let after = 0;
  for (const found of annotated.matchAll(/⟦([^⟧]+?) => ([^⟧]+)⟧/gu)) {
    pasted += annotated.slice(after, found.index);
    const [whole, text = '', meaning = ''] = found;
    clauses.push({ text, meaning, start: pasted.length, end: pasted.length + text.length, items: [] });
    pasted += text;
    after = found.index + whole.length;
  }
  pasted += annotated.slice(after);
  const steps: string[] = clauses.map(() => '');
  let at = 0;
  for (const step of importSequence(pasted, {}, [], engine).steps) {
    for (const item of step.items) {
      const found = findText(pasted, item.text, at);
      if (found === null) continue;
      const { start, end } = found;
      at = end;
      const shared = clauses.map((clause) => Math.min(clause.end, end) - Math.max(clause.start, start));
      const best = Math.max(0, ...shared);
      const place = best > 0 ? shared.indexOf(best) : -1;
      if (place < 0) continue;
      clauses[place]!.items.push(item);
      steps[place] = step.title;
    }
  }
  return clauses.map(({ text, meaning, items }, i) => {
    const read = readMeaning(items);
    return { step: steps[i]!, text, meaning, read, verdict: verdictOf(items, meaning) };
  });
}

/** Compares the items of a clause with its meaning. */
export function verdictOf(items: readonly ImportedItem[], meaning: string): Verdict {
  const read = readMeaning(items);
  const right = meaning.split('||').some((one) => same(one, read));
  const asked = items.length === 0 || items.some(({ status }) => status === 'unknown');
  const guessed = items.some(({ status }) => status === 'guessed');
  return right ? 'right' : asked ? 'asked' : guessed ? 'wrong guess' : 'wrong but sure';
}

/**
 * Finds a text as a separate piece of the pasted text, whatever blanks divide its words. An item may have the name of a
 * column before the line below that name, so the text after a colon is also tried. Cells of a table may break a text
 * off in the middle, so the beginning of the text is tried last.
 */
export function findText(
  pasted: string,
  text: string,
  from: number,
): { readonly start: number; readonly end: number } | null {
  const letter = /[\p{L}\p{N}]/u;
  const apart = (start: number, end: number) =>
    !(letter.test(pasted[start] ?? '') && letter.test(pasted[start - 1] ?? '')) &&
    !(letter.test(pasted[end - 1] ?? '') && letter.test(pasted[end] ?? ''));
  const words = text.trim().split(/\s+/);
  for (const sought of [text, text.slice(text.indexOf(': ') + 2), words.slice(0, 2).join(' '), words[0]!]) {
    const escaped = sought
      .trim()
      .split(/\s+/)
      .map((word) => word.replace(/[.*+?^${}()|[\]\\]/g, '\\$&'))
      .join('\\s+');
    if (escaped === '') continue;
    const pattern = new RegExp(escaped, 'g');
    pattern.lastIndex = from;
    for (let found = pattern.exec(pasted); found !== null; found = pattern.exec(pasted)) {
      const end = found.index + found[0].length;
      if (apart(found.index, end)) return { start: found.index, end };
      pattern.lastIndex = found.index + 1;
    }
  }
  return null;
}

/** Returns the content that items teach, in the notation of a meaning. */
export function readMeaning(items: readonly ImportedItem[]): string {
  const patterns = items.flatMap((item) => item.patterns);
  const words = items.flatMap(({ bySight }) => bySight);
  const parts = [...patterns, ...(words.length > 0 ? ['words:', ...words] : [])];
  if (items.some(({ status }) => status === 'unknown')) parts.push('?');
  return parts.join(' ') || '-';
}

function same(meaning: string, read: string): boolean {
  const set = (text: string) =>
    [...new Set(spellOut(text).toLowerCase().split(/\s+/))].filter(Boolean).sort().join(' ');
  if (meaning.trim() === '?') return read.includes('?');
  return set(meaning) === set(read);
}

/** Returns a meaning in which the names of sets are replaced by their patterns. */
export function spellOut(text: string): string {
  const spelled = text.replace(/@\w+/g, (name) => SETS[name] ?? name);
  return spelled === text ? text : spellOut(spelled);
}
