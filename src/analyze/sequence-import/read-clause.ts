import type { Chunk } from './clause-chunk.ts';
import { ClauseReader } from './clause-reader.ts';
import { applyNotations } from './notation-rules.ts';
import { beginsPhrase, findPhrase, LONGEST_PHRASE, type Phrase } from './phrases.ts';
import { readSign } from './read-sign.ts';
import { settleAnnouncement } from './settle-announcement.ts';
import { findSpelling } from './spellings.ts';
import type { Lexeme } from './split-lexemes.ts';
import { wordRules } from './word-rules.ts';

/**
 * Reads one clause of a sequence into chunks, left to right. What is said: `vowel teams ai, ay` is one chunk,
 * `short a, m, s` three, since m and s are no spellings of short a. `used` hears the name of each rule that applied.
 */
export function readClause(
  lexemes: readonly Lexeme[],
  used: (rule: string) => void = () => {},
): readonly Chunk[] {
  const reader = new ClauseReader(applyNotations(lexemes, used));
  for (let i = 0; i < reader.lexemes.length; ) {
    const lexeme = reader.lexemes[i]!;
    reader.at = i;
    if (lexeme.kind === 'word') i += readWord(reader, i, used);
    else {
      readSign(reader, lexeme, i);
      i += 1;
    }
  }
  const chunks = reader.finish();
  settleAnnouncement(reader.lexemes, chunks);
  return chunks;
}

<<<<<<< HEAD
/** Reads the word at `i` by the first rule that applies; gives how many lexemes it took. */
function readWord(reader: ClauseReader, i: number, used: (rule: string) => void): number {
  const lexeme = reader.lexemes[i]!;
  const within = reader.scope?.heading.within ?? new Set();
  const affix = [...within].some((id) => /^(suf|pre)fix-/.test(id));
  const [phrase, length] = phraseAt(reader.lexemes, i);
  const word = { i, lexeme, phrase, length, spelling: findSpelling(lexeme.text, lexeme.mark, affix) };
  for (const { name, applies } of wordRules) {
    const taken = applies(reader, word);
    if (taken === 0) continue;
    used(name);
    return taken;
=======
class ClauseReader {
  private readonly chunks: Chunk[] = [];
  private readonly lexemes: readonly Lexeme[];
  private chunk: Chunk | null = null;
  /** Something divides what comes from what came. */
  private broken = true;
  /** A heading that a list follows; `strong`: the list is announced by a colon or brackets. */
  private scope: { heading: Phrase; chunk: Chunk; strong: boolean; sound: boolean } | null = null;
  /** The heading before a colon; it goes for the headings listed after it: "y as a vowel: long i, long e". */
  private announced: Phrase | null = null;
  private hinting = false;
  /** In brackets that say more about what stands before them. */
  private aside = false;
  private depth = 0;
  /** Where the words before the next chunk began that say nothing themselves. */
  private pending: number | null = null;

  constructor(lexemes: readonly Lexeme[]) {
    this.lexemes = lexemes;
  }

  read(): readonly Chunk[] {
    for (let i = 0; i < this.lexemes.length; ) {
      const lexeme = this.lexemes[i]!;
      const taken = lexeme.kind === 'word' ? this.readWord(i) : this.readSign(lexeme);
      i += taken;
    }
    this.closePending();
    if (this.chunks.length === 0 && this.lexemes.length > 0) this.open(0).unknown += 1;
    return this.chunks;
  }

  private readSign(lexeme: Lexeme): number {
    switch (lexeme.kind) {
      case 'break':
        this.divide();
        break;
      case 'is':
        this.readColon();
        break;
      case 'hint':
        this.hinting = this.chunk !== null;
        break;
      case 'open':
        this.depth += 1;
        if (this.depth > 1 || this.chunk === null) break;
        if (this.scope?.chunk === this.chunk && this.chunk.spelled.length === 0 && !this.broken)
          this.scope.strong = true;
        else this.aside = true;
        break;
      case 'close':
        this.depth = Math.max(0, this.depth - 1);
        if (this.depth === 0 && !this.aside) this.scope = null;
        if (this.depth === 0) this.aside = this.hinting = false;
        break;
      default:
        this.readHeading(soundPhrase(lexeme.text), lexeme, 1, true);
    }
    return 1;
  }

  /** A colon or the like: announces a list after a heading, examples after letters, anything after other words. */
  private readColon(): void {
    const { chunk, scope } = this;
    if (scope !== null && scope.chunk === chunk) {
      scope.strong ||= chunk.spelled.length === 0;
      this.announced = scope.heading;
    } else if (chunk !== null && chunk.known === 0 && !this.aside) {
      // "Otto's list: wr" is about wr.
      this.chunks.pop();
      this.chunk = null;
      this.pending = chunk.start;
    } else this.hinting = chunk !== null && chunk.spelled.length > 0;
  }

  private divide(): void {
    if (this.aside) return;
    this.closePending();
    this.broken = true;
    this.hinting = false;
    if (this.scope !== null && !this.scope.strong && this.scope.chunk.spelled.length === 0) this.scope = null;
  }

  /** Reads the word at `i`, or the longest phrase there; gives how many lexemes it took. */
  private readWord(i: number): number {
    const lexeme = this.lexemes[i]!;
    const { text } = lexeme;
    const affix =
      this.scope !== null && [...this.scope.heading.within!].some((id) => /^(suf|pre)fix-/.test(id));
    const spelling = findSpelling(text, lexeme.mark, affix);
    const last = this.chunk?.spelled.at(-1);
    const [phrase, length] = this.phraseAt(i);
    if (phrase !== null && (this.aside || this.hinting || length > 1 || lexeme.mark === 'none')) {
      this.readHeading(phrase, lexeme, length, false);
      return length;
    }
    if (last !== undefined && (text === 'before' || text === 'after')) return this.readCondition(i, last);
    if (this.aside || this.hinting) {
      const sound = text.length <= 2 && this.hinting ? soundsByName.get(text) : undefined;
      // oo (long), oo (short)
      const sized =
        last !== undefined && /^(?:long|short)$/.test(text)
          ? findPhrase([text, last.spelling.letters])
          : null;
      const starts =
        !this.aside && spelling !== null && last !== undefined && !fits(text, last.spelling.letters);
      if (sound !== undefined && last !== undefined && last.examples.length === 0)
        last.sounds.push(soundPhrase(text));
      else if (sized !== null) last!.sounds.push(sized);
      else if (!starts || last.examples.length === 0) last?.examples.push(text);
      else this.readSpelling(spelling, lexeme);
      return 1;
    }
    const prose = this.chunk !== null && !this.broken && this.chunk.known === 0;
    if (text === 'and' && !prose) this.divide();
    else if (text === 'or' && this.divides(i)) this.divide();
    else if (spelling !== null && !(prose && lexeme.mark === 'none' && !text.includes('_')))
      this.readSpelling(spelling, lexeme);
    else if (last !== undefined && this.shows(text, last)) last.examples.push(text);
    else if (this.isNote(text)) this.touch();
    else if (restWords.has(text) && !prose) this.openOr(lexeme).rest = true;
    else if (hintWords.has(text) && last !== undefined && !this.broken) this.hinting = true;
    else if (fillerWords.has(text) || hintWords.has(text) || /^\p{N}+$/u.test(text)) this.wait(lexeme);
    else this.openOr(lexeme).unknown += 1;
    return 1;
  }

  /** Whether a word is an example of letters before it; beyond a comma one letter is too little to say so: `t, the`. */
  private shows(text: string, { spelling }: Spelled): boolean {
    return text.length > 1 && fits(text, spelling.letters) && (!this.broken || spelling.letters.length > 1);
  }

  /** Words after a heading may be examples of it: `schwa (about, lemon)`, `short a: at, am`. */
  private isNote(text: string): boolean {
    if (this.scope === null || this.scope.chunk !== this.chunk) return false;
    const { heading, strong, chunk } = this.scope;
    if (this.depth > 0 && text.length > 2) return true;
    return strong && chunk.spelled.length === 0 && shows(text, heading);
  }

  private phraseAt(i: number): readonly [Phrase | null, number] {
    if (!beginsPhrase(this.lexemes[i]!.text)) return [null, 0];
    const words: { text: string; end: number }[] = [];
    for (let at = i; at < this.lexemes.length && words.length < LONGEST_PHRASE; at++) {
      const { kind, text } = this.lexemes[at]!;
      // "consonant + le", "VC/CV", "soft c & g"
      if (kind === 'break' && text !== '' && '+/&'.includes(text)) continue;
      if (kind !== 'word') break;
      words.push({ text, end: at + 1 });
    }
    for (; words.length > 0; words.pop()) {
      const phrase = findPhrase(words.map(({ text }) => text));
      if (phrase !== null) return [phrase, words.at(-1)!.end - i];
    }
    return [null, 0];
  }

  private readHeading(phrase: Phrase, lexeme: Lexeme, words: number, sound: boolean): void {
    const { chunk } = this;
    // "-ed /t/, /d/" are two sounds of one ending, "ch, /sh/" two spellings.
    const more = sound && (chunk?.spelled.at(-1)?.sounds.length ?? 0) > 0;
    const beside = chunk !== null && (this.aside || this.hinting || !this.broken || more);
    if (beside && chunk.spelled.length > 0) {
      const narrows = (one: Spelled) => one.spelling.candidates.some((id) => phrase.within?.has(id));
      const last = chunk.spelled.at(-1)!;
      const leads = this.scope?.chunk === chunk && this.scope.sound;
      if (this.aside || this.hinting || (sound && !leads && (!this.broken || narrows(last)))) {
        if (phrase.within !== null) last.sounds.push(phrase);
        this.touch();
        return;
      }
      if (!sound && narrows(last)) {
        this.narrowBack(phrase, narrows);
        chunk.known += words;
        return;
      }
    } else if (beside && !(sound && this.scope?.sound) && this.joins(chunk, phrase)) {
      chunk.phrases.push(phrase);
      chunk.known += words;
      if (phrase.within !== null) this.scope = { heading: phrase, chunk, strong: false, sound };
      return;
    } else if (beside && this.aside) {
      return;
    }
    const opened = this.open(lexeme.start);
    if (this.announced !== null && overlap(this.announced, phrase)) opened.phrases.push(this.announced);
    else this.announced = null;
    opened.phrases.push(phrase);
    opened.known += words;
    this.scope = phrase.within === null ? null : { heading: phrase, chunk: opened, strong: false, sound };
  }

  /** Two headings side by side are one when they can mean the same: "long a silent e". */
  private joins(chunk: Chunk, phrase: Phrase): boolean {
    if (this.aside) return false;
    const before = chunk.phrases.at(-1);
    if (before === undefined) return chunk.known === 0;
    return overlap(before, phrase);
  }

  /** A heading after its letters, "kn, wr, gn silent letters": goes for all letters before it that it can. */
  private narrowBack(phrase: Phrase, narrows: (one: Spelled) => boolean): void {
    for (let i = this.chunks.length - 1; i >= 0; i--) {
      const { phrases, spelled } = this.chunks[i]!;
      if (phrases.length > 0 || spelled.length === 0) break;
      if (!spelled.every((one) => one.headings.length === 0 && narrows(one))) break;
      for (const one of spelled) one.headings.push(phrase);
    }
  }

  private readSpelling(spelling: Spelling, lexeme: Lexeme): void {
    const one: Spelled = { spelling, headings: [], sounds: [], examples: [] };
    const { scope } = this;
    const inScope = scope !== null && spelling.candidates.some((id) => scope.heading.within!.has(id));
    if (inScope) one.headings.push(...scope.chunk.phrases.filter(({ within }) => within !== null));
    const stays =
      scope !== null &&
      scope.chunk === this.chunk &&
      (inScope || (scope.strong && this.chunk.spelled.length > 0));
    if (!inScope && !stays) this.scope = null;
    const chunk = stays ? this.chunk! : this.open(lexeme.start);
    this.touch();
    chunk.spelled.push(one);
    chunk.known += 1;
  }

  private readCondition(i: number, last: Spelled): number {
    const { end, meant } = readCondition(this.lexemes, i, last.spelling.letters);
    if (meant !== null) last.sounds.push({ ids: [meant], sure: true, within: new Set([meant]) });
    this.touch();
    return end - i;
  }

  /** `ai or ay`, `/d/ or /t/`; but in `ar or ir` and `ar, or` it is letters. */
  private divides(i: number): boolean {
    const before = this.lexemes[i - 1];
    const after = this.lexemes[i + 1];
    if (before?.kind === 'sound' && after?.kind === 'sound') return true;
    if (before?.kind !== 'word' || after?.kind !== 'word') return false;
    if (before.text.endsWith('r') || after.text.endsWith('r')) return false;
    return this.scope?.heading.within?.has('or') !== true;
  }

  private open(start: number): Chunk {
    const chunk: Chunk = {
      start: this.pending ?? start,
      phrases: [],
      spelled: [],
      known: 0,
      unknown: 0,
      rest: false,
    };
    this.chunks.push(chunk);
    this.chunk = chunk;
    this.touch();
    return chunk;
  }

  private openOr(lexeme: Lexeme): Chunk {
    if (this.chunk !== null && !this.broken) {
      this.touch();
      return this.chunk;
    }
    return this.open(lexeme.start);
  }

  private wait(lexeme: Lexeme): void {
    if (this.broken || this.chunk === null) this.pending ??= lexeme.start;
  }

  /** Words that say nothing are an item after all where nothing else stands between two commas. */
  private closePending(): void {
    if (this.pending !== null) this.open(this.pending).unknown += 1;
  }

  private touch(): void {
    this.broken = false;
    this.pending = null;
>>>>>>> h-names
  }
  return 1;
}

/** The longest phrase that begins at `i`, and how many lexemes it takes. */
function phraseAt(lexemes: readonly Lexeme[], i: number): readonly [Phrase | null, number] {
  if (!beginsPhrase(lexemes[i]!.text)) return [null, 0];
  const words: { text: string; end: number }[] = [];
  for (let at = i; at < lexemes.length && words.length < LONGEST_PHRASE; at++) {
    const { kind, text } = lexemes[at]!;
    // "consonant + le", "VC/CV", "soft c & g"
    if (kind === 'break' && text !== '' && '+/&'.includes(text)) continue;
    if (kind !== 'word') break;
    words.push({ text, end: at + 1 });
  }
  for (; words.length > 0; words.pop()) {
    const phrase = findPhrase(words.map(({ text }) => text));
    if (phrase !== null) return [phrase, words.at(-1)!.end - i];
  }
  return [null, 0];
}
