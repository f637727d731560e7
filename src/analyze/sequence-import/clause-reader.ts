import type { PatternId } from '../types.ts';
import type { Chunk, Spelled } from './clause-chunk.ts';
import { ClauseState } from './clause-state.ts';
import { besideHeading, type HeadingAt, headingRules } from './heading-rules.ts';
import { overlap, type Phrase, shows } from './phrases.ts';
import { isOpen } from './settle-announcement.ts';
import { familyMember, findSpelling, type Spelling } from './spellings.ts';
import type { Lexeme } from './split-lexemes.ts';

/** Words that a letter may follow: "the letter m". */
const introduces =
  /^(?:letters?|sounds?|spellings?|graphemes?|consonants?|vowels?|initial|final|and|or|of|new|teach|introduce|the)$/;

/** The state of a clause with the operations that the rules for words need. */
export class ClauseReader extends ClauseState {
  /** Whether a word is an example of one of the headings before it: me in "long e, o in me, go". */
  showsHeading(text: string): boolean {
    return this.chunks.slice(-4).some(({ phrases }) => phrases.some((phrase) => shows(text, phrase)));
  }

  /** Returns the last letters that were read, the nearest first. */
  lastSpelled(count: number): readonly Spelled[] {
    return this.chunks
      .slice(-count)
      .flatMap(({ spelled }) => spelled)
      .slice(-count)
      .reverse();
  }

  /**
   * Whether a word is an example of the pattern that the heading before it teaches: `schwa (about, lemon)`, `short a:
   * at, am`.
   */
  isNote(text: string): boolean {
    if (this.scope === null || this.scope.chunk !== this.chunk) return false;
    const { heading, strong, chunk } = this.scope;
    const owned = heading.within!.has('possessive');
    if (text.includes("'") && (owned || heading.within!.has('contraction'))) return true;
    // A further word after an example: "the girl's coat".
    if (owned && strong && chunk.examples.length > 0) return true;
    if (this.depth > 0) return true;
    const beside = strong || (this.scope.sound && text.length > 2 && !this.broken);
    return beside && chunk.spelled.length === 0 && shows(text, heading);
  }

  /** Reads a heading of `words` words, or a sound between slashes. */
  readHeading(phrase: Phrase, lexeme: Lexeme, words: number, sound: boolean): void {
    const heading = { phrase, lexeme, words, sound, ...besideHeading(this, phrase, sound) };
    for (const { name, reads } of headingRules) {
      if (!reads(this, heading)) continue;
      this.used(name);
      return;
    }
    this.beginHeading(heading);
  }

  private beginHeading({ phrase, lexeme, words, sound }: HeadingAt): void {
    const { scope } = this;
    // The first heading only announces the list: "final syllables: consonant-le".
    if (scope?.strong && scope.chunk === this.chunk && phrase.ids.some((id) => scope.heading.within!.has(id)))
      scope.chunk.announces = true;
    const opened = this.open(lexeme.start);
    if (this.announced !== null && overlap(this.announced, phrase)) opened.phrases.push(this.announced);
    else this.announced = null;
    opened.phrases.push(phrase);
    opened.known += words;
    this.scope = phrase.within === null ? null : { heading: phrase, chunk: opened, strong: false, sound };
  }

  readSpelling(written: Spelling, lexeme: Lexeme): void {
    const { scope } = this;
    const spelling = this.inFamily(written) ?? this.unmarked(written) ?? written;
    const inScope = this.isInScope(spelling);
    const one: Spelled = {
      spelling,
      start: lexeme.start,
      headings: this.headingsOf(spelling, inScope),
      sounds: [],
      examples: [],
      odd: this.isOdd(spelling, inScope),
      every: 0,
      spread: false,
    };
    const list = this.listOf(inScope);
    // A list may have letters that its heading cannot mean: "two-letter consonants: sh". The list then counts, not the
    // heading.
    const opens = scope !== null && scope.chunk === this.chunk && scope.chunk.spelled.length === 0;
    if (!inScope && opens && (scope.strong || !this.broken)) scope.chunk.announces = isOpen(scope.heading);
    if (!inScope && list === null) this.scope = null;
    if (list === null && this.isNicknamed(lexeme)) this.dropNickname();
    const stray = !inScope && this.standsInProse(lexeme);
    const chunk = list ?? this.open(lexeme.start);
    if (stray) chunk.unknown += 1;
    this.touch();
    chunk.spelled.push(one);
    chunk.known += 1;
  }

  /** Whether the heading before some letters can mean these letters. */
  private isInScope({ candidates, letters }: Spelling): boolean {
    const { scope } = this;
    // Nobody lists the b of lamb as a spelling of /m/.
    const silent = (id: PatternId) =>
      scope?.sound === true && letters.length === 1 && /^(?:mb|kn|wr|gn)$/.test(id);
    return scope !== null && candidates.some((id) => scope.heading.within!.has(id) && !silent(id));
  }

  private headingsOf({ candidates }: Spelling, inScope: boolean): Phrase[] {
    const placed = this.place === '' ? [] : candidates.filter((id) => id.startsWith(this.place));
    const place: Phrase = { ids: [], sure: true, within: new Set(placed), keeps: [] };
    const named = inScope ? this.scope!.chunk.phrases.filter(({ within }) => within !== null) : [];
    return [...(placed.length > 0 ? [place] : []), ...named];
  }

  /** Whether letters do not fit the text around them. */
  private isOdd({ letters }: Spelling, inScope: boolean): boolean {
    const { scope } = this;
    if (inScope) return false;
    const within = scope?.chunk === this.chunk ? scope : null;
    const vowel = /^[aeiouy]/.test(letters);
    // If the heading before a list cannot mean these letters, either the heading or the letters are misread.
    if (vowel && within?.strong) this.misread = true;
    const unlike = within?.sound === true && within.chunk.spelled.length > 0 && letters.length > 1;
    return unlike || (vowel && (this.misread || (this.nicknamed && letters.length === 1)));
  }

  /** Returns the chunk that the letters continue. Returns null if the letters begin a new chunk. */
  private listOf(inScope: boolean): Chunk | null {
    const { scope } = this;
    if (scope === null || scope.chunk !== this.chunk) return null;
    const { heading, chunk, strong } = scope;
    // A sure heading that already has examples does not apply to the letters after them: "soft g (gem, huge) and -dge".
    const shown =
      heading.sure && heading.ids.length === 1 && chunk.examples.length > 0 && chunk.spelled.length === 0;
    return !shown && (inScope || (strong && chunk.spelled.length > 0)) ? chunk : null;
  }

  /** Whether the words before letters are only an unknown name: "Puffin letters -ed". */
  private isNicknamed({ mark, text }: Lexeme): boolean {
    const explicit = mark !== 'none' || text.includes('_');
    return explicit && !this.broken && this.chunk?.known === 0 && !this.chunk.rest;
  }

  /** Reads one letter as the members of a family that contain it: "Double letters: f, l", "VCe (a, i)", "blends (l, r)". */
  private inFamily({ letters, candidates }: Spelling): Spelling | null {
    const { scope } = this;
    if (letters.length !== 1 || scope === null || scope.chunk !== this.chunk) return null;
    // "VCe a, i" needs no colon.
    const splits =
      /^[aeiou]$/.test(letters) && scope.heading.ids.includes('a_e') && scope.heading.within!.has('a_e');
    // "Doubled letters f, l" needs no colon either.
    const doubles = /^[flsz]$/.test(letters) && scope.heading.ids.includes('ff');
    if (!scope.strong && !splits && !doubles) return null;
    const { ids, within } = scope.heading;
    if (candidates.some((id) => within!.has(id))) return null;
    return familyMember(letters, ids);
  }

  /**
   * Reads letters without their mark if the heading requires this. `a-` under "schwa" is a letter of a word, not a
   * prefix.
   */
  private unmarked({ letters, candidates }: Spelling): Spelling | null {
    const { scope } = this;
    const named = scope?.strong === true || scope?.heading.ids.includes('schwa-a') === true;
    const within = named && scope!.chunk === this.chunk ? scope!.heading.within! : null;
    if (within === null || candidates.some((id) => within.has(id))) return null;
    const plain = findSpelling(letters, 'none');
    if (plain?.candidates.some((id) => within.has(id)) === true) return plain;
    // "schwa: -en, -on" is about the vowel of the ending.
    const [, vowel = ''] = /^([aeiou])[^aeiouy]{1,2}$/.exec(letters) ?? [];
    const schwa = vowel === '' || !within.has('schwa-a') ? null : findSpelling(vowel, 'none');
    return schwa?.candidates.some((id) => within.has(id)) === true ? schwa : null;
  }

  /** Whether a single bare letter directly follows other words. Such a letter may mean anything: "words with r". */
  private standsInProse({ text, mark }: Lexeme): boolean {
    if (text.length > 1 || mark !== 'none') return false;
    const before = this.lexemes[this.at - 1];
    return (
      before?.kind === 'word' &&
      before.text.length > 1 &&
      !introduces.test(before.text) &&
      findSpelling(before.text, before.mark) === null
    );
  }
}
