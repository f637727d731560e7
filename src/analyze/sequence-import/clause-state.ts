import type { Chunk, Spelled } from './clause-chunk.ts';
import type { Phrase } from './phrases.ts';
import type { Lexeme } from './split-lexemes.ts';

/** A heading that a list follows; `strong`: the list is announced by a colon or brackets. */
export interface HeadingScope {
  readonly heading: Phrase;
  readonly chunk: Chunk;
  strong: boolean;
  readonly sound: boolean;
}

/** Which blends stand at a place: "at the end of words". */
function sideOf(place: string): 'start-' | 'end-' | '' {
  return /begin|start|front|initial/.test(place) ? 'start-' : /end|final/.test(place) ? 'end-' : '';
}

/** What is known of a clause at a word: its chunks so far, and what waits for the next. */
export class ClauseState {
  readonly lexemes: readonly Lexeme[];
  chunk: Chunk | null = null;
  /** The last sounds were named by letters without slashes: "ed = t, d, id". */
  saidAsLetters = false;
  /** Something divides what comes from what came. */
  broken = true;
  scope: HeadingScope | null = null;
  /** Examples follow. */
  hinting = false;
  /** Examples were listed up to the last comma: "as in go, me". */
  trailing = false;
  /** After words that leave open how things go together. */
  hedging = false;
  /** After "no" or "not": what follows is not taught. */
  negated = false;
  /** In brackets that say more about what stands before them. */
  aside = false;
  depth = 0;
  /** After "with" or the like, which may mean anything: "vowels with r". */
  loose = false;
  readonly chunks: Chunk[] = [];
  /** The last heading without letters, after a comma: "digraphs, such as sh". */
  dormant: HeadingScope | null = null;
  /** The heading before a colon; it goes for the headings listed after it: "y as a vowel: long i, long e". */
  announced: Phrase | null = null;
  /** Where the letters to come stand: "at the end: st, sk". */
  place: 'start-' | 'end-' | '' = '';
  /** The lexeme being read. */
  at = 0;
  /** What it lists are exceptions to what it names. */
  private doubtful = false;
  /** The last divider was the word "and". */
  joined = false;
  /** Where the words before the next chunk began that say nothing themselves. */
  private pending: number | null = null;
  /** How many they are. */
  private waiting = 0;
  private ending = false;
  /** Words before "and" that say nothing yet. */
  private carried = false;
  /** The last word was one of prose, neither letters nor a phrase. */
  prose = false;
  /** A heading was not understood, or does not go with its list. */
  protected misread = false;
  protected nicknamed = false;

  /** Hears the name of each rule that was applied to a heading. */
  readonly used: (rule: string) => void;

  constructor(lexemes: readonly Lexeme[], used: (rule: string) => void = () => {}) {
    this.lexemes = lexemes;
    this.used = used;
  }

  /** The chunks of the clause, once all its lexemes are read. */
  finish(): readonly Chunk[] {
    this.ending = true;
    this.closePending();
    if (this.chunks.length === 0 && this.lexemes.length > 0) this.open(0).unknown += 1;
    return this.chunks;
  }

  get last(): Spelled | undefined {
    return this.chunk?.spelled.at(-1);
  }

  /** From here on nothing is sure, nor is the heading before. */
  doubt(): void {
    this.doubtful = true;
    if (this.chunk !== null) this.chunk.asks = true;
  }

  /** What comes is a guess: something before it was not understood. */
  unsure(): void {
    this.doubtful = true;
  }

  get pendingIsEmpty(): boolean {
    return this.pending === null;
  }

  /** What nobody knows was only the name of the letters that follow: "Otto's list: wr" is about wr. */
  dropNickname(): void {
    let start = this.chunk?.start ?? 0;
    while (this.chunks.length > 0 && this.chunks.at(-1)!.known === 0) start = this.chunks.pop()!.start;
    this.chunk = null;
    this.pending = start;
    // Under a name that nobody knows one vowel letter may be short, long or neither.
    this.nicknamed = true;
  }

  /** `joined`: by the word "and". */
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

  /** After a full stop a list is over: "/oo/: ew, ue. Spelling u" begins anew; of "Blends. Bl, cl" the list comes yet. */
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

  /** Words that say something beside what is taught go with what came, if anything did. */
  note(lexeme: Lexeme): void {
    if (this.chunk === null || this.chunk.known === 0) {
      this.place = sideOf(lexeme.text);
      this.wait(lexeme);
    } else {
      this.waiting += 1;
      this.placeBlends(lexeme.text);
      // "the /v/ sound at the end of words": which letters it has there is not said.
      if (this.chunk.phrases.some(({ sound }) => sound) && this.chunk.spelled.length === 0)
        this.chunk.hedged = true;
    }
  }

  /** "blends at the beginning" are those of beginnings. */
  private placeBlends(place: string): void {
    const phrases = this.chunks
      .slice(-2)
      .flatMap((chunk) => chunk.phrases.map((phrase, i) => ({ chunk, phrase, i })));
    const side = sideOf(place);
    // "blends st, sp at the beginning"
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

  /** Words that say nothing are an item after all where nothing else stands between two commas. */
  private closePending(): void {
    if (this.pending === null) return;
    const known = this.chunk !== null && this.chunk.known > 0;
    // "for plurals and verbs": after "and" they go on with what came; so do several words after a comma.
    if (known && (this.joined || this.waiting > 1)) this.pending = null;
    // "Children read and spell": what they read comes yet.
    else if (!this.joined || this.ending) this.open(this.pending).unknown += 1;
    else this.carried = true;
  }

  touch(): void {
    this.broken = false;
    this.pending = null;
  }
}
