import type { PatternId } from '../types.ts';
import type { Chunk, Spelled } from './clause-chunk.ts';
import { ClauseState } from './clause-state.ts';
import { overlap, type Phrase, shows } from './phrases.ts';
import { isOpen } from './settle-announcement.ts';
import { familyMember, findSpelling, type Spelling } from './spellings.ts';
import type { Lexeme } from './split-lexemes.ts';

/** How far back a sound after a list is taken to go for it. */
const LONGEST_LIST = 20;

/** Words that a letter may follow: "the letter m". */
const introduces =
  /^(?:letters?|sounds?|spellings?|graphemes?|consonants?|vowels?|initial|final|and|or|of|new|teach|introduce|the)$/;

/** Patterns of the sounds that endings have. */
const ENDING_SOUNDS: Readonly<Record<string, readonly PatternId[]>> = {
  s: ['s', 'z'],
  es: ['z', 's', 'suffix-es'],
  ed: ['t', 'd', 'suffix-ed-t', 'suffix-ed-d', 'suffix-ed-id'],
};

/** What the rules for words do with what is known of a clause. */
export class ClauseReader extends ClauseState {
  /** Whether a word shows one of the headings before it: me, in "long e, o in me, go". */
  showsHeading(text: string): boolean {
    return this.chunks.slice(-4).some(({ phrases }) => phrases.some((phrase) => shows(text, phrase)));
  }

  /** The last letters that were read, the nearest first. */
  lastSpelled(count: number): readonly Spelled[] {
    return this.chunks
      .slice(-count)
      .flatMap(({ spelled }) => spelled)
      .slice(-count)
      .reverse();
  }

  /** Whether a word is an example of what the heading before it teaches: `schwa (about, lemon)`, `short a: at, am`. */
  isNote(text: string): boolean {
    if (this.scope === null || this.scope.chunk !== this.chunk) return false;
    const { heading, strong, chunk } = this.scope;
    const owned = heading.within!.has('possessive');
    if (text.includes("'") && (owned || heading.within!.has('contraction'))) return true;
    // "the girl's coat"
    if (owned && strong && chunk.examples.length > 0) return true;
    if (this.depth > 0) return true;
    const beside = strong || (this.scope.sound && text.length > 2 && !this.broken);
    return beside && chunk.spelled.length === 0 && shows(text, heading);
  }

  readHeading(phrase: Phrase, lexeme: Lexeme, words: number, sound: boolean): void {
    const { chunk } = this;
    if (phrase.within?.size === 0 && (chunk === null || this.broken)) {
      // A sound that nobody knows names the letters after it, which are guesses then; alone it is asked.
      this.unsure();
      this.wait(lexeme);
      return;
    }
    if (sound && this.endsAgain(phrase)) return;
    // "-ed /t/, /d/" are two sounds of one ending, "ch, /sh/" two spellings.
    const said = (chunk?.spelled.at(-1)?.sounds.length ?? 0) > 0;
    // "ea says short e (bread) and long a (steak)"
    const again =
      said &&
      (this.joined || (this.last?.every ?? 0) > 0) &&
      phrase.within?.size !== 0 &&
      this.narrowsLast(phrase);
    const more = said && (sound || again);
    const beside = chunk !== null && (this.aside || this.hinting || !this.broken || more);
    if (beside && chunk.spelled.length > 0) {
      const narrows = (one: Spelled) => one.spelling.candidates.some((id) => phrase.within?.has(id));
      const last = chunk.spelled.at(-1)!;
      const leads = this.scope?.chunk === chunk && this.scope.sound;
      if (this.aside || this.hinting || again || (sound && !leads && (!this.broken || narrows(last)))) {
        // "ew, ue, ui: the /oo/ sound"
        const listed = sound && this.hinting && this.listsSound(phrase);
        if (phrase.within === null) this.addAside(phrase, last);
        else if (!listed) last.sounds.push(phrase);
        this.touch();
        return;
      }
      if (!sound && narrows(last)) {
        this.narrowBack(phrase, narrows);
        chunk.known += words;
        return;
      }
    } else if (beside && !(sound && this.scope?.sound) && this.joins(chunk, phrase)) {
      // "diphthongs /oi/, /ou/": the heading goes for each sound.
      if (sound && this.scope !== null && !this.scope.sound) this.announced = this.scope.heading;
      chunk.phrases.push(phrase);
      chunk.known += words;
      this.loose = false;
      this.touch();
      if (phrase.within !== null) this.scope = { heading: phrase, chunk, strong: false, sound };
      return;
    } else if (beside && this.aside) {
      return;
    }
    // "final syllables: consonant-le": the heading only announces what is listed.
    const { scope } = this;
    if (scope?.strong && scope.chunk === chunk && phrase.ids.some((id) => scope.heading.within!.has(id)))
      scope.chunk.announces = true;
    const opened = this.open(lexeme.start);
    if (this.announced !== null && overlap(this.announced, phrase)) opened.phrases.push(this.announced);
    else this.announced = null;
    opened.phrases.push(phrase);
    opened.known += words;
    this.scope = phrase.within === null ? null : { heading: phrase, chunk: opened, strong: false, sound };
  }

  /** "-s, /s/ in cats and /z/ in dogs", "-ed, its sounds /t/, /d/": sounds of the ending that was named. */
  private endsAgain(phrase: Phrase): boolean {
    const ending = this.chunks
      .slice(-3)
      .flatMap(({ spelled }) => spelled)
      .at(-1);
    const letters = ending?.spelling.letters ?? '';
    const suffix = ending?.spelling.usual.some((id) => id.startsWith('suffix-')) === true;
    const own = ENDING_SOUNDS[letters];
    if (ending === undefined || !suffix || own === undefined) return false;
    if (!own.some((id) => phrase.within?.has(id))) return false;
    if (ending.spelling.candidates.some((id) => phrase.within?.has(id))) ending.sounds.push(phrase);
    this.hinting = true;
    this.touch();
    return true;
  }

  /** "-ed (double the consonant)" teaches both, if it is not what the letters mean there. */
  private addAside(phrase: Phrase, last: Spelled): void {
    if (last.spelling.candidates.some((id) => phrase.ids.includes(id)))
      last.sounds.push({ ...phrase, within: new Set(phrase.ids) });
    else if ((this.aside || this.hinting) && phrase.ids.some((id) => id.startsWith('change-'))) {
      this.chunk!.phrases.push({ ...phrase, keeps: phrase.ids });
      this.chunk!.hedged = true;
    }
    // "h as in hut and schwa": what the letters cannot be may be taught besides.
    else if (phrase.ids.length > 0) this.chunk!.hedged = true;
  }

  private narrowsLast(phrase: Phrase): boolean {
    return this.last?.spelling.candidates.some((id) => phrase.within?.has(id)) ?? false;
  }

  /** Whether a sound after a colon is that of a whole list of letters before it; if so, it goes for each. */
  private listsSound(phrase: Phrase): boolean {
    const list: Spelled[] = [];
    for (let i = this.chunks.length - 1; i >= Math.max(0, this.chunks.length - LONGEST_LIST); i--) {
      const { phrases, spelled } = this.chunks[i]!;
      const open = spelled.every((one) => one.sounds.length + one.examples.length === 0);
      if (phrases.length > 0 || spelled.length === 0 || !open) break;
      list.push(...spelled);
    }
    const fits = list.every((one) => one.spelling.candidates.some((id) => phrase.within?.has(id)));
    if (list.length < 2 || !fits) return false;
    for (const one of list) one.sounds.push(phrase);
    return true;
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
      // "gh (laugh), gh silent": what has an example of its own is told by it.
      const own = (one: Spelled) => one !== this.last && one.examples.length > 0;
      if (!spelled.every((one) => one.headings.length === 0 && narrows(one) && !own(one))) break;
      for (const one of spelled) one.headings.push(phrase);
    }
  }

  readSpelling(written: Spelling, lexeme: Lexeme): void {
    const { scope } = this;
    const spelling = this.inFamily(written) ?? this.unmarked(written) ?? written;
    // The b of lamb is no spelling of /m/ that anybody lists.
    const silent = (id: PatternId) =>
      scope?.sound === true && spelling.letters.length === 1 && /^(?:mb|kn|wr|gn)$/.test(id);
    const inScope =
      scope !== null && spelling.candidates.some((id) => scope.heading.within!.has(id) && !silent(id));
    const among = scope?.sound && scope.chunk === this.chunk && scope.chunk.spelled.length > 0;
    const vowel = /^[aeiouy]/.test(spelling.letters);
    // What the heading before a list cannot mean says that one of the two is misread.
    if (!inScope && vowel && scope?.strong && scope.chunk === this.chunk) this.misread = true;
    const unlike = !inScope && among === true && spelling.letters.length > 1;
    const odd =
      unlike || (vowel && !inScope && (this.misread || (this.nicknamed && spelling.letters.length === 1)));
    const one: Spelled = {
      spelling,
      start: lexeme.start,
      headings: [],
      sounds: [],
      examples: [],
      odd,
      every: 0,
      spread: false,
    };
    const placed = this.place === '' ? [] : spelling.candidates.filter((id) => id.startsWith(this.place));
    if (placed.length > 0) one.headings.push({ ids: [], sure: true, within: new Set(placed), keeps: [] });
    if (inScope) one.headings.push(...scope.chunk.phrases.filter(({ within }) => within !== null));
    // "soft g (gem, huge) and -dge": what a sure heading has shown is not listed any more.
    const shown =
      scope?.heading.sure === true &&
      scope.heading.ids.length === 1 &&
      scope.chunk.examples.length > 0 &&
      scope.chunk.spelled.length === 0;
    const stays =
      !shown &&
      scope !== null &&
      scope.chunk === this.chunk &&
      (inScope || (scope.strong && this.chunk.spelled.length > 0));
    // "two-letter consonants: sh" lists what its heading cannot mean: the list counts.
    const listed = scope !== null && scope.chunk === this.chunk && scope.chunk.spelled.length === 0;
    if (!inScope && listed && (scope.strong || !this.broken)) scope.chunk.announces = isOpen(scope.heading);
    if (!inScope && !stays) this.scope = null;
    const explicit = lexeme.mark !== 'none' || lexeme.text.includes('_');
    if (!stays && explicit && !this.broken && this.chunk?.known === 0 && !this.chunk.rest)
      this.dropNickname();
    const stray = !inScope && this.standsInProse(lexeme);
    const chunk = stays ? this.chunk! : this.open(lexeme.start);
    if (stray) chunk.unknown += 1;
    this.touch();
    chunk.spelled.push(one);
    chunk.known += 1;
  }

  /** "Double letters: f, l", "VCe (a, i)", "blends (l, r)": one letter stands for those of the family that have it. */
  private inFamily({ letters, candidates }: Spelling): Spelling | null {
    const { scope } = this;
    if (letters.length !== 1 || scope === null || scope.chunk !== this.chunk) return null;
    // "VCe a, i" needs no colon.
    const splits =
      /^[aeiou]$/.test(letters) && scope.heading.ids.includes('a_e') && scope.heading.within!.has('a_e');
    // "Doubled letters f, l" neither.
    const doubles = /^[flsz]$/.test(letters) && scope.heading.ids.includes('ff');
    if (!scope.strong && !splits && !doubles) return null;
    const { ids, within } = scope.heading;
    if (candidates.some((id) => within!.has(id))) return null;
    return familyMember(letters, ids);
  }

  /** `a-` under "schwa" is a letter of a word, no prefix. */
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

  /** One bare letter right after other words may be anything: "words with r". */
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
