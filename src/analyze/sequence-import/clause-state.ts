import type { Chunk, Spelled } from './clause-chunk.ts';
import type { Phrase } from './phrases.ts';
import type { Lexeme } from './split-lexemes.ts';

/** A heading that is followed by a list. `strong` means that a colon or brackets announce the list. */
export interface HeadingScope {
  readonly heading: Phrase;
  readonly chunk: Chunk;
  strong: boolean;
  readonly sound: boolean;
}

/** Returns the kind of blends that a place such as "at the end of words" means. */
function sideOf(place: string): 'start-' | 'end-' | '' {
  return /begin|start|front|initial/.test(place) ? 'start-' : /end|final/.test(place) ? 'end-' : '';
}

/** The state of reading a clause: the chunks before the current word, and the words kept for the next chunk. */
export class ClauseState {
  readonly lexemes: readonly Lexeme[];
  chunk: Chunk | null = null;
  /** Whether the last sounds were written as letters without slashes: "ed = t, d, id". */
  saidAsLetters = false;
  /** Whether a divider separates the next word from the text before it. */
  broken = true;
  scope: HeadingScope | null = null;
  /** Whether examples follow. */
  hinting = false;
  /** Whether examples were listed up to the last comma: "as in go, me". */
  trailing = false;
  /** Whether the words before leave open how the parts belong together. */
  hedging = false;
  /** Whether "no" or "not" came before. The text that follows is then not taught. */
  negated = false;
  /** Whether the current word is in brackets that say more about the text before them. */
  aside = false;
  depth = 0;
  /** Whether "with" or a similar word came before. Such a word may mean anything: "vowels with r". */
  loose = false;
  readonly chunks: Chunk[] = [];
  /** The last heading that has no letters and is followed by a comma: "digraphs, such as sh". */
  dormant: HeadingScope | null = null;
  /** The heading before a colon. It applies to the headings listed after the colon: "y as a vowel: long i, long e". */
  announced: Phrase | null = null;
  /** The place of the letters that follow: "at the end: st, sk". */
  place: 'start-' | 'end-' | '' = '';
  /** Index of the lexeme being read. */
  at = 0;
  /** Whether all later chunks are guesses. */
  private doubtful = false;
  /** Whether the last divider was the word "and". */
  joined = false;
  /** Start of the words before the next chunk that teach nothing themselves. */
  private pending: number | null = null;
  /** The number of words that wait for a chunk. */
  private waiting = 0;
  private ending = false;
  /** Whether the words before "and" teach nothing yet. */
  private carried = false;
  /** Whether the last word was prose rather than letters or a phrase. */
  prose = false;
  /** Whether a heading was not understood or does not fit its list. */
  protected misread = false;
  protected nicknamed = false;

  /** Is called with the name of each rule that was applied to a heading. */
  readonly used: (rule: string) => void;

  constructor(lexemes: readonly Lexeme[], used: (rule: string) => void = () => {}) {
    this.lexemes = lexemes;
    this.used = used;
  }

  /** Returns the chunks of the clause after all its lexemes are read. */
  finish(): readonly Chunk[] {
    this.ending = true;
    this.closePending();
    if (this.chunks.length === 0 && this.lexemes.length > 0) this.open(0).unknown += 1;
    return this.chunks;
  }

  get last(): Spelled | undefined {
    return this.chunk?.spelled.at(-1);
  }

  /** Makes all later chunks guesses, and the current chunk unsure as well. */
  doubt(): void {
    this.doubtful = true;
    if (this.chunk !== null) this.chunk.asks = true;
  }

  /** Makes all later chunks guesses, because some text before them was not understood. */
  unsure(): void {
    this.doubtful = true;
  }

  get pendingIsEmpty(): boolean {
    return this.pending === null;
  }

  /** Drops an unknown name of the letters that follow: "Otto's list: wr" is about wr. */
  dropNickname(): void {
    let start = this.chunk?.start ?? 0;
    while (this.chunks.length > 0 && this.chunks.at(-1)!.known === 0) start = this.chunks.pop()!.start;
    this.chunk = null;
    this.pending = start;
    // Under an unknown name a single vowel letter may be short, long or neither.
    this.nicknamed = true;
  }

  /** Reads a divider. `joined` means that the divider is the word "and". */
  divide(joined = false): void {
    if (this.aside) return;
    this.joined = joined;
    this.closePending();
    this.broken = true;
    this.loose = this.hedging = this.negated = false;
    this.trailing ||= this.hinting;
    this.hinting = false;
    if (this.scope !== null && !this.scope.strong && this.scope.chunk.spelled.length === 0) {
      this.dormant = this.scope;
      this.scope = null;
    }
  }

  /**
   * Ends a list at a full stop. In "/oo/: ew, ue. Spelling u" the list ends after ue. In "Blends. Bl, cl" the list of
   * the heading is still to come.
   */
  endSentence(): void {
    this.trailing = false;
    if (this.scope !== null && this.scope.chunk.spelled.length > 0) this.scope = this.announced = null;
  }

  open(start: number): Chunk {
    const chunk: Chunk = {
      start: this.pending ?? start,
      phrases: [],
      spelled: [],
      known: 0,
      unknown: this.doubtful || this.loose ? 1 : 0,
      announces: false,
      asks: this.negated,
      hedged: this.hedging || this.carried,
      examples: [],
      rest: false,
    };
    this.carried = false;
    this.chunks.push(chunk);
    this.chunk = chunk;
    this.saidAsLetters = false;
    this.trailing = this.loose = false;
    this.touch();
    return chunk;
  }

  openOr(lexeme: Lexeme): Chunk {
    if (this.chunk !== null && !this.broken) {
      this.touch();
      return this.chunk;
    }
    return this.open(lexeme.start);
  }

  wait(lexeme: Lexeme): void {
    if (!this.broken && this.chunk !== null) return;
    if (this.pending === null) this.waiting = 0;
    this.pending ??= lexeme.start;
    this.waiting += 1;
  }

  /** Reads words that add something to the text taught. They belong to the chunk before, if there is one. */
  note(lexeme: Lexeme): void {
    if (this.chunk === null || this.chunk.known === 0) {
      this.place = sideOf(lexeme.text);
      this.wait(lexeme);
    } else {
      this.waiting += 1;
      this.placeBlends(lexeme.text);
      // "the /v/ sound at the end of words" does not say which letters the sound has there.
      if (this.chunk.phrases.some(({ sound }) => sound) && this.chunk.spelled.length === 0)
        this.chunk.hedged = true;
    }
  }

  /** Limits blends to a place: "blends at the beginning" are the blends that begin words. */
  private placeBlends(place: string): void {
    const phrases = this.chunks
      .slice(-2)
      .flatMap((chunk) => chunk.phrases.map((phrase, i) => ({ chunk, phrase, i })));
    const side = sideOf(place);
    // The place also limits blends that are listed: "blends st, sp at the beginning".
    for (const one of side === '' ? [] : this.chunks.slice(-8).flatMap(({ spelled }) => spelled)) {
      const placed = one.spelling.candidates.filter((id) => id.startsWith(side));
      if (placed.length > 0 && one.headings.length > 0)
        one.headings.push({ ids: [], sure: true, within: new Set(placed), keeps: [] });
    }
    for (const { chunk, phrase, i } of phrases) {
      const ids = phrase.ids.filter((id) => id.startsWith(side));
      const blends = phrase.ids.every((id) => /^(?:start|end)-/.test(id));
      if (side !== '' && blends && ids.length > 0) chunk.phrases[i] = { ...phrase, ids };
    }
  }

  /** Makes an item of words that teach nothing if they are alone between two commas. */
  private closePending(): void {
    if (this.pending === null) return;
    const known = this.chunk !== null && this.chunk.known > 0;
    // After "and", such words continue the chunk before: "for plurals and verbs". Several words after a comma do the
    // same.
    if (known && (this.joined || this.waiting > 1)) this.pending = null;
    // "Children read and spell": the text they read is still to come.
    else if (!this.joined || this.ending) this.open(this.pending).unknown += 1;
    else this.carried = true;
  }

  touch(): void {
    this.broken = false;
    this.pending = null;
  }
}
