import type { CellKind } from './column-kinds.ts';
import type { LaidCell, LaidStep } from './layout.ts';
import type { Phrase } from './phrases.ts';
import { readItems } from './read-items.ts';
import { readWords } from './read-words.ts';
import type { ReadItem } from './settle-items.ts';
import type { Beside } from './weigh-examples.ts';
import { noNeeds, type WordNeeds } from './word-needs.ts';

interface ReadCell {
  readonly kind: CellKind;
  readonly items: readonly ReadItem[];
}

/** Facts about the whole plan that apply to each of its steps. */
export type PlanWide = Pick<Beside, 'first' | 'mark' | 'apart'>;

/** Reads the items of a step. Cells in one table row are read together. */
export function readStep(
  { title, cells }: LaidStep,
  needs: WordNeeds = noNeeds,
  plan: PlanWide = {},
): readonly ReadItem[] {
  const rows: LaidCell[][] = [];
  for (const cell of cells) {
    const row = rows.at(-1);
    if (row !== undefined && row[0]!.row === cell.row) row.push(cell);
    else rows.push([cell]);
  }
  const items = rows.flatMap((row) => readRow(row, needs, plan));
  const named = items.filter((item) => title.includes(item.text));
  const rests =
    plan.first !== true && goesOverName.test(title) && named.every(({ patterns }) => patterns.length === 0);
  // If there are more rows than this, their text belongs to another step.
  if (!rests || rows.length > MOST_REVIEWED) return items;
  const some = cells[0]?.row !== undefined && items.some(isOpenGuess);
  const isType = ({ patterns }: ReadItem) => patterns.some((id) => id.startsWith('type-'));
  return items.map(
    (item): ReadItem =>
      some && isType(item) && !title.includes(item.text)
        ? { ...item, status: 'guessed' }
        : (item.status === 'unknown' && /\s/.test(item.text)) ||
            isOpenGuess(item) ||
            (some && item.bySight.length === 0)
          ? { ...item, status: 'ignored', patterns: [], bySight: [] }
          : item,
  );
}

const MOST_REVIEWED = 4;

/** Names of steps that only go over earlier content: "Unit 2 review and assessment", "Step 8 - Kindergarten check". */
const goesOverName =
  /\b(?:review|assessments?|check(?:point|-?in|-?up)?|testing|tests?|monitoring|screening|catch[- ]?up)\b/i;

/**
 * Whether an item is a vague guess: "Word sorts by vowel sound". In a step that only goes over earlier content, such a
 * guess teaches nothing.
 */
const isOpenGuess = ({ status, bySight, headings, patterns }: ReadItem) =>
  status === 'guessed' &&
  bySight.length === 0 &&
  (headings.length > 0 || patterns.every((id) => id.startsWith('syllables-')));

/** Returns the headings of the nearest line above that has any. `about` lists the nearest name first. */
function headingsAbove(about = ''): readonly Phrase[] {
  for (const name of about === '' ? [] : about.split('\n')) {
    const headings = readItems(name, 'patterns').flatMap((item) => item.headings);
    if (headings.length > 0) return headings;
  }
  return [];
}

/** A heading with this many patterns or fewer says by itself what is taught. */
const FEW = 2;

/** A guess with this many patterns only names the content of other cells. */
const MANY = 10;

/**
 * Whether all patterns are suffixes. "Plurals" are -s and -es, and either may be taught under this name. Soft c and
 * soft g are two separate patterns.
 */
const sameFamily = (ids: readonly string[]) => ids.every((id) => id.startsWith('suffix-'));

/**
 * Whether a heading only names the patterns taught below it: "Vowel teams" above `ai, ay`. "Blends with l" above blends
 * with r does not.
 */
function isNameOf({ sound, sure, ids, within }: Phrase, taught: ReadonlySet<string>): boolean {
  if (sound === true || within === null) return false;
  if (!sure || ids.length === 0) return [...taught].some((id) => within.has(id));
  return ids.length > FEW || sameFamily(ids)
    ? ids.some((id) => taught.has(id))
    : ids.every((id) => taught.has(id));
}

/** Clears a line of an outline that only names the content of the lines indented below it: "Vowel teams" above `ai, ay`. */
function withoutNames(items: readonly ReadItem[], below: readonly ReadItem[]): readonly ReadItem[] {
  const taught = new Set(below.flatMap(({ patterns }) => patterns));
  const names = ({ headings, status }: ReadItem) =>
    headings.length === 0
      ? status === 'unknown' || status === 'ignored'
      : headings.every((heading) => isNameOf(heading, taught));
  const only = items.every(names);
  if (taught.size === 0 || !only) return items;
  return items.map((item): ReadItem => {
    const part = listedInPart(item, taught);
    if (part !== null) return part;
    const kept = [...new Set(item.headings.flatMap(({ keeps }) => keeps))];
    return { ...item, status: kept.length > 0 ? item.status : 'ignored', patterns: kept };
  });
}

/**
 * Limits a name to the patterns listed beside it: "Schwa" beside `a (about)`. Weak vowels are hardly ever listed one by
 * one. A list of some may therefore be everything that is taught, or only a beginning, so the teacher is asked to
 * check. Returns null for other names.
 */
function listedInPart(item: ReadItem, taught: ReadonlySet<string>): ReadItem | null {
  const [heading] = item.headings;
  if (item.headings.length !== 1 || !heading!.ids.includes('schwa-a') || heading!.ids.length <= FEW)
    return null;
  const listed = heading!.ids.filter((id) => taught.has(id));
  if (listed.length === 0 || listed.length === heading!.ids.length) return null;
  return { ...item, status: 'guessed', patterns: listed };
}

/** Returns the items that the name of a step teaches in addition to the lines below it. Unknown parts are only a name. */
function besideItsName(items: readonly ReadItem[], below: readonly ReadItem[]): readonly ReadItem[] {
  const taught = below.some(({ patterns }) => patterns.length > 0);
  const onlyNames = ({ status, headings, partly }: ReadItem) =>
    status === 'unknown' ||
    (taught &&
      status === 'guessed' &&
      (partly === true || (headings.length > 0 && headings.every(({ sure }) => !sure))));
  return withoutNames(items, below).map(
    (item): ReadItem => (onlyNames(item) ? { ...item, status: 'ignored', patterns: [], bySight: [] } : item),
  );
}

/**
 * Reads the cells of a row twice. The headings in one cell apply to the letters in another: "Long e" beside `ee, ea`.
 * If two cells say the same, the narrower one counts: "Initial blends" beside `bl, cl` teaches only those two.
 */
function readRow(cells: readonly LaidCell[], needs: WordNeeds, plan: PlanWide): readonly ReadItem[] {
  const words = cells.filter(({ kind }) => kind === 'examples').flatMap(({ text }) => readWords(text));
  const examples = words.map((word) => word.toLowerCase());
  const headings = cells.map(({ text, kind }) =>
    teaching(kind) ? readItems(text, kind).flatMap((item) => item.headings) : [],
  );
  const readCell = (
    { text, kind, about }: LaidCell,
    i: number,
    shown: readonly string[] = examples,
  ): ReadCell => {
    const named = headingsAbove(about);
    const others = cells[0]!.row === undefined ? [] : headings.filter((_, place) => place !== i).flat();
    return {
      kind,
      items: readItems(text, kind, { examples: shown, headings: [...named, ...others], needs, ...plan }),
    };
  };
  const read = cells.map((cell, i) => readCell(cell, i));
  if (cells[0]!.row === undefined) {
    const lines = withoutExampleLines(cells, read, needs, readCell);
    const heard = lines.map((cell, i) => ({
      ...cell,
      items: cell.items.map((item) => ofEnding(item, lines.slice(0, i))),
    }));
    return withoutGoals(cells, heard).flatMap(({ items }, i) => {
      const below = heard.slice(i + 1, i + 1 + (cells[i]!.heads ?? 0));
      return below.length === 0
        ? items
        : (cells[i]!.kind === 'title' ? besideItsName : withoutNames)(
            items,
            below.flatMap((cell) => cell.items),
          );
    });
  }
  return read.flatMap((cell, i) => {
    const letters = lettersBeside(read, i);
    // If one part of a title names the letters, the other part does too: "consonants and a vowel" beside m, s, a.
    const names = cell.kind === 'title' && cell.items.some(({ headings }) => isListed(headings, letters));
    return cell.items.map((item) => narrow(item, cell.kind, letters, names));
  });
}

/** Limits sounds below an ending to the patterns of the ending that have them: "/t/, /d/, /id/" below "-ed". */
function ofEnding(item: ReadItem, above: readonly ReadCell[]): ReadItem {
  const { headings, patterns } = item;
  if (headings.length === 0 || !headings.every(({ sound }) => sound === true)) return item;
  const endings = above
    .flatMap(({ items }) => items.flatMap((one) => one.patterns))
    .filter((id) => id.startsWith('suffix-'));
  const heard = endings.filter((id) => headings.some(({ within }) => within!.has(id)));
  if (heard.length === 0 || patterns.some((id) => endings.includes(id))) return item;
  return { ...item, status: 'matched', patterns: heard };
}

/** Matches a text that contains only readable words and dividers: "ship, fish, shop". */
const onlyWords =
  /^(?:(?:e\.g\.|ex\.|examples?)[:,]?\s*)?\p{L}[\p{L}'’]+(?:(?:\s*[,;/·]\s*|\s+[-–—]\s+|\s+)(?:(?:and|or)\s+)?\p{L}[\p{L}'’]+){0,30}[.!]?$/iu;

/**
 * Removes lines of examples: "ship, fish, shop" below "sh". If each word of a line needs a pattern from the lines
 * above, the line shows this pattern and teaches nothing. It also settles anything that the lines above leave open.
 */
function withoutExampleLines(
  cells: readonly LaidCell[],
  read: readonly ReadCell[],
  needs: WordNeeds,
  again: (cell: LaidCell, i: number, examples: readonly string[]) => ReadCell,
): readonly ReadCell[] {
  const kept = [...read];
  read.forEach(({ items, kind }, i) => {
    const { text } = cells[i]!;
    // A word may also be letters: "pure, sure".
    const open = items.some(({ status, bySight }) => status === 'unknown' || bySight.length > 0);
    if (i === 0 || kind !== 'patterns' || !open) return;
    const taught = new Set(kept.slice(0, i).flatMap((cell) => cell.items.flatMap((item) => item.patterns)));
    if (!onlyWords.test(text)) {
      kept[i] = { kind, items: withoutShown(items, taught, needs) };
      return;
    }
    const words = readWords(text).filter((word) => !/^(?:and|or|examples?)$/i.test(word));
    const shown = words.map((word) => needs(word.toLowerCase()));
    // A single word with a capital may be taught content: "Abbreviations".
    const single = words.length < 2 && !/^\p{Ll}/u.test(text);
    if (words.length === 0 || single || !shown.every((ids) => [...ids].some((id) => taught.has(id)))) return;
    kept[i] = {
      kind,
      items: items.map((item): ReadItem => ({ ...item, status: 'ignored', patterns: [], bySight: [] })),
    };
    const above = kept
      .slice(0, i)
      .findLastIndex((cell) => cell.items.some(({ patterns }) => patterns.length > 0));
    if (kept[above]!.items.some(({ status }) => status === 'guessed'))
      kept[above] = again(
        cells[above]!,
        above,
        words.map((word) => word.toLowerCase()),
      );
  });
  return kept;
}

/**
 * Removes consecutive words that show the pattern, whatever comes after them: "shop, wish, chin. Watch the sh" below
 * sh.
 */
function withoutShown(
  items: readonly ReadItem[],
  taught: ReadonlySet<string>,
  needs: WordNeeds,
): readonly ReadItem[] {
  const shows = items.map(
    ({ text, status, bySight }) =>
      (status === 'unknown' || (status === 'guessed' && bySight.length === 1)) &&
      /^\p{Ll}[\p{L}'’]+$/u.test(text) &&
      [...needs(text.toLowerCase())].some((id) => taught.has(id)),
  );
  return items.map(
    (item, i): ReadItem =>
      shows[i] && (shows[i - 1] || shows[i + 1]) ? { ...item, status: 'ignored', bySight: [] } : item,
  );
}

/** Matches a statement of what children should be able to do in the end: "Goal: children hear each sound in a blend". */
const goal =
  /^(?:(?:our|the|learning|main|unit|weekly|lesson|year-end|end-of-year) )?(?:goals?|aims?|outcomes?|objectives?|targets?|success criteria|by the end|i can)\b[^:–—-]{0,30}(?::|\s[-–—]\s|,\s)|^(?:the |most |all )?(?:children|students|pupils|learners|kids)\s+(?!(?:with|who|in|from)\b)\p{L}+/iu;

/** Matches a complete sentence: "Show cap and kite with letter cards." */
const remark = /^\p{Lu}.*\p{L}{2,}[ ,].*[.!]["”’)]*$/su;

/**
 * Removes goals and remarks if other lines of a step say what is taught. A goal in words then teaches nothing more,
 * unless it names patterns that no other line has. A sentence in which nothing is understood teaches nothing either.
 */
function withoutGoals(cells: readonly LaidCell[], read: readonly ReadCell[]): readonly ReadCell[] {
  const isGoal = cells.map(({ text }) => goal.test(text));
  const taught = new Set(
    read.flatMap(({ items }, i) => (isGoal[i] ? [] : items.flatMap(({ patterns }) => patterns))),
  );
  if (taught.size === 0) return read;
  const says = ({ headings, patterns, status }: ReadItem) =>
    (status === 'matched' || headings.every(({ sure, ids }) => sure && ids.length <= FEW)) &&
    patterns.some((id) => !taught.has(id));
  const isRemark = ({ text, kind }: LaidCell, { items }: ReadCell) =>
    kind === 'patterns' &&
    remark.test(text) &&
    items.every(({ patterns, status }) => patterns.length === 0 && status !== 'matched');
  return read.map((cell, i) => {
    const drops = isGoal[i] ? (item: ReadItem) => !says(item) : isRemark(cells[i]!, cell) ? () => true : null;
    if (drops === null) return cell;
    const items = cell.items.map(
      (item): ReadItem =>
        drops(item)
          ? { ...item, status: 'ignored', patterns: [], bySight: [] }
          : item.headings.length > 0 && item.status === 'matched'
            ? { ...item, status: 'guessed' }
            : item,
    );
    return { ...cell, items };
  });
}

const teaching = (kind: CellKind) => kind === 'patterns' || kind === 'title';

/** Returns the patterns that the letters in the other cells of a row teach. */
function lettersBeside(cells: readonly ReadCell[], i: number): ReadonlySet<string> {
  const others = cells.filter(({ kind }, place) => place !== i && teaching(kind));
  const items = others.flatMap((cell) => cell.items).filter(({ headings }) => headings.length === 0);
  return new Set(items.flatMap(({ patterns }) => patterns));
}

/** Whether the letters beside a heading are the list of the heading. "Soft c" lists ce, but not the dge beside it. */
const isListed = (headings: readonly Phrase[], letters: ReadonlySet<string>) =>
  headings.some(({ within, sure, ids, sound }) => {
    const few = sure && sound !== true && ids.length > 0 && ids.length <= FEW;
    const listed = [...letters].filter((id) => within!.has(id));
    return listed.length > 0 && (!few || listed.length === letters.size || ids.some((id) => letters.has(id)));
  });

/** Whether an item only names the letters beside it: "Gliding vowels" beside oi, oy. "ei/ie" may teach something more. */
function onlyNames(item: ReadItem, names: boolean): boolean {
  const { headings, status, text, partly, patterns } = item;
  // "Complex consonants" beside tch also only names the letters. "consonants" alone would be a guess.
  const vague =
    partly === true || names || patterns.length > MANY || /\b(?:review|revision|mixed)\b/i.test(text);
  const guess = status === 'guessed' && headings.length > 0 && vague;
  return (status === 'unknown' || guess) && !/[(/[]|-\p{L}|\p{L}-(?!\p{L})/u.test(text);
}

/**
 * Whether a heading may teach more than the letters beside it: "Schwa in unaccented syllables" beside -el. The teacher
 * is asked to check.
 */
function mayTeachBesides({ headings, status, patterns }: ReadItem, letters: ReadonlySet<string>): boolean {
  const [heading] = headings;
  if (headings.length !== 1 || status !== 'matched' || patterns.length === 0) return false;
  return heading!.sure && heading!.ids.length > FEW && !heading!.ids.some((id) => letters.has(id));
}

/** Returns types of syllables that may be taught as well: "VCe syllable" in a column of its own beside a_e. */
const typesOf = ({ text, patterns }: ReadItem) =>
  /\bsyllables?\b/i.test(text) ? patterns.filter((id) => id.startsWith('type-')) : [];

/**
 * Narrows an item whose letters are in another cell of the row. The item is a heading of these letters or an unknown
 * title.
 */
function narrow(item: ReadItem, kind: CellKind, letters: ReadonlySet<string>, names: boolean): ReadItem {
  const { headings, status } = item;
  const listed = isListed(headings, letters);
  const onlyTitle = kind === 'title' && letters.size > 0 && onlyNames(item, names);
  if (!listed && !onlyTitle) return item;
  const part = listedInPart(item, letters);
  if (part !== null) return part;
  if (mayTeachBesides(item, letters)) return { ...item, status: 'guessed' };
  // "Soft c" beside ce, ci, cy has the same meaning.
  const same = item.patterns.length > 0 && item.patterns.every((id) => letters.has(id));
  if (same && status === 'matched' && !headings.some(({ sound }) => sound)) return item;
  const types = kind === 'patterns' ? typesOf(item) : [];
  if (types.length > 0) return { ...item, status: 'guessed', patterns: types };
  const kept = listed ? headings.flatMap(({ keeps }) => keeps) : [];
  // Sounds limit the patterns of the letters: "/t/, /d/, /id/" beside -ed.
  const heard = headings.every(({ sound }) => sound === true)
    ? headings.flatMap(({ within }) =>
        [...letters].filter((id) => id.startsWith('suffix-') && within!.has(id)),
      )
    : [];
  const patterns = [...new Set([...kept, ...heard])];
  return { ...item, status: patterns.length > 0 ? 'matched' : 'ignored', patterns, bySight: [] };
}
