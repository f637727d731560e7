import type { Aligner } from '../../analyze/alignment/align.ts';
import { hasVowel } from '../../analyze/alignment/sounds.ts';
import { buildRecord } from '../../analyze/build/build-word.ts';
import { type BuiltWord, spellingsOf, type WordSpelling } from '../../analyze/build/built-word.ts';
import type {
  AffixForm,
  Correspondence,
  MadeBy,
  ReadingRecord,
  WordRecord,
} from '../../analyze/lexicon/word-record.ts';
import { findSuffix, PREFIXES } from '../../analyze/morphology/affixes.ts';
import { restoreStem } from '../../analyze/morphology/restore-stem.ts';
import type { Derivation } from '../morphology/derivation.ts';
import { type AlignedReading, rankReadings } from './choose-reading.ts';
import { cleanPronunciation } from './clean-pronunciation.ts';
import type { HandMade } from './read-hand-made.ts';
import { ONLY_WEAK, sameSounds } from './same-sounds.ts';

export interface RecordSources {
  /** The pronunciations of each word: CMUdict phones with stress. */
  readonly pronunciations: ReadonlyMap<string, readonly (readonly string[])[]>;
  readonly derivations: ReadonlyMap<string, Derivation>;
  readonly aligner: Aligner;
  readonly handMade: HandMade;
}

/**
 * Returns the record of each word that can be aligned. Shorter words come first, so that a derived word finds its base.
 * A derived word is stored as base + affix if that gives one of its pronunciations (hoping). Otherwise it is stored by
 * its own units, with a note of where it comes from (confusion).
 */
export function makeRecords(sources: RecordSources): Map<string, WordRecord> {
  const records = new Map<string, WordRecord>();
  const built = new Map<string, BuiltWord[]>();
  const find = (word: string): readonly BuiltWord[] => {
    let known = built.get(word);
    if (!known) {
      const record = records.get(word);
      known = record ? buildRecord(word, record, find) : [];
      built.set(word, known);
    }
    return known;
  };
  const words = [...sources.pronunciations.keys()].sort((a, b) => a.length - b.length || (a < b ? -1 : 1));
  for (const word of words) {
    const record = makeRecord(word, sources, find);
    if (record && record.readings.length > 0) records.set(word, record);
  }
  return records;
}

type Find = (word: string) => readonly BuiltWord[];

function makeRecord(word: string, sources: RecordSources, find: Find): WordRecord | null {
  const { aligner, handMade, pronunciations, derivations } = sources;
  const derivation = derivations.get(word);
  const fixed = handMade.units.get(word);
  if (fixed) {
    const madeBy = derivation ? originOf(word, derivation, fixed.at(-1)?.sound ?? '') : null;
    return { readings: [{ kind: 'whole', units: fixed, madeBy }], homograph: false };
  }
  const homograph = handMade.homographs.get(word);
  const variants = homograph ?? handMade.pronunciations.get(word) ?? pronunciations.get(word)!;
  if (derivation && !homograph) {
    const sounds = variants.map((phones) => cleanPronunciation(word, phones));
    const compose = (from: Derivation) => composeReadings(word, from, sounds, find, variants);
    const readings = compose(derivation).map((record) => preferNoun(word, derivation, record, compose));
    if (readings.length > 0) return { readings, homograph: readings.length > 1 };
  }
  const ranked = rankReadings(word, variants, aligner);
  const chosen = homograph ? [...ranked].sort((a, b) => a.listed - b.listed) : ranked.slice(0, 1);
  const readings = chosen.map((reading) => {
    const composed =
      homograph && derivation && composeOne(word, derivation, homograph[reading.listed]!, find);
    // The plural of axis or analysis is not derived from axe or analyse, unlike bases.
    const greek = homograph !== undefined && /^IY\d$/.test(homograph[reading.listed]!.at(-2) ?? '');
    return (
      composed || tellWhole(word, reading, greek && word.endsWith('es') ? undefined : derivation, aligner)
    );
  });
  return { readings, homograph: homograph !== undefined && readings.length > 1 };
}

/**
 * Composes one reading of a homograph from its base if that gives exactly the sounds of the reading. Both readings of
 * uses are composed, but axes as the plural of axis is not.
 */
function composeOne(
  word: string,
  derivation: Derivation,
  phones: readonly string[],
  find: Find,
): ReadingRecord | undefined {
  const variant = cleanPronunciation(word, phones);
  const composed = composeReadings(word, derivation, [variant], find, [phones])[0];
  const built = composed && buildRecord(word, { readings: [composed], homograph: false }, find)[0];
  const sounds = built ? soundsOf(built, ({ sound }) => sound) : [];
  // The comparison with CMUdict does not distinguish the weak vowel of axes from the long vowel of its other reading.
  return variant.at(-2) === 'IY' && sounds.at(-2) === 'IH' ? undefined : composed;
}

/**
 * Prefers the plural of a noun in -f or -fe to a verb whose usual reading sounds different: lives is life + s, not the
 * live of live crabs.
 */
function preferNoun(
  word: string,
  derivation: Derivation,
  record: ReadingRecord,
  compose: (from: Derivation) => readonly ReadingRecord[],
): ReadingRecord {
  if (record.kind !== 'affixed' || record.madeBy.reading === 0 || derivation.kind !== 'suffix') return record;
  const noun = restoreStem(word, derivation.affix).find(({ change }) => change === 'f-to-v');
  return (noun && compose({ ...derivation, base: noun.stem, change: noun.change })[0]) ?? record;
}

function composeReadings(
  word: string,
  derivation: Derivation,
  variants: readonly string[][],
  find: Find,
  listed: readonly (readonly string[])[],
): ReadingRecord[] {
  const matches = (record: ReadingRecord, mayDiffer?: ReadonlySet<string> | 'unstressed'): boolean => {
    const [built] = buildRecord(word, { readings: [record], homograph: false }, find);
    if (!built) return false;
    const sounds = soundsOf(built, ({ sound }) => sound);
    // The le of juggle may still be pronounced as a syllable in juggling.
    const inFull = soundsOf(built, ({ sound, said, spells }) => (spells === 'le' && said) || sound);
    // A sound that ends the first half and begins the second may be pronounced once: roommate.
    const once = built.affixes.some(({ kind }) => kind === 'compound')
      ? sounds.filter((sound, i) => sound !== sounds[i - 1])
      : sounds;
    return variants.some((variant, i) =>
      [sounds, inFull, once].some((one) =>
        mayDiffer === 'unstressed'
          ? sameButUnstressed(one, variant, listed[i]!)
          : sameSounds(one, variant, mayDiffer) && keepsStress(one, listed[i]!),
      ),
    );
  };
  const records: ReadingRecord[] = [];
  const bases = find(derivation.base);
  if (derivation.kind === 'compound') {
    for (let left = 0; left < bases.length; left++) {
      for (let right = 0; right < find(derivation.affix).length; right++) {
        records.push({ kind: 'compound', cut: derivation.base.length, left, right });
      }
    }
    return records.filter((record) => matches(record)).slice(0, 1);
  }
  const isInflection = derivation.kind === 'suffix' && findSuffix(derivation.affix)?.inflection;
  const forms = formsOf(derivation);
  const stem = stemOf(word, derivation);
  if (stem === -1) return [];
  const lastLetter = derivation.base.replace(/(?<=l)e$/, '').at(-1);
  const mayLessen = derivation.change === 'y-to-i' || lastLetter === derivation.affix[0];
  for (let reading = 0; reading < Math.min(bases.length, 2); reading++) {
    const options = (mayLessen ? [false, true] : [false]).flatMap((lessened) =>
      forms.map((affix): ReadingRecord => ({ kind: 'affixed', madeBy: { affix, stem, reading, lessened } })),
    );
    const fit =
      options.find((option) => matches(option)) ??
      (isInflection ? options.find((option) => matches(option, 'unstressed')) : undefined);
    if (fit) records.push(fit);
  }
  // A homograph keeps only the readings that fit best: refused, frequently.
  const closest = records.length > 1 ? records.filter((record) => matches(record, ONLY_WEAK)) : [];
  return closest.length > 0 ? closest : records;
}

function soundsOf(built: BuiltWord, soundOf: (one: WordSpelling) => string): string[] {
  return spellingsOf(built)
    .map(soundOf)
    .flatMap((sound) => (sound === '-' ? [] : sound.split('.')));
}

/**
 * Whether two pronunciations differ only in unstressed vowels. CMUdict writes unstressed vowels inconsistently: the e
 * of release is IY, but the e of releases is IH.
 */
function sameButUnstressed(
  sounds: readonly string[],
  variant: readonly string[],
  phones: readonly string[],
): boolean {
  if (sounds.length !== phones.length || variant.length !== phones.length) return false;
  // A form without any stress is a weak form: the second reading of does.
  if (!phones.some((phone) => phone.endsWith('1'))) return false;
  return phones.every(
    (phone, i) => sameSounds([sounds[i]!], [variant[i]!]) || (phone.endsWith('0') && hasVowel(sounds[i]!)),
  );
}

/** Whether the stressed vowel is not weak. reference, whose first e is stressed, is not pronounced as refer + ence. */
function keepsStress(sounds: readonly string[], phones: readonly string[]): boolean {
  const stressed = phones.findIndex((phone) => phone.endsWith('1'));
  if (stressed === -1 || sounds.length !== phones.length) return true;
  return !/^(AX|IX)$/.test(sounds[stressed]!) || phones[stressed] === 'AH1';
}

/** Returns all pronunciations of the affix that fit its letters. The caller tries each of them. */
function formsOf({ affix, kind }: Derivation): AffixForm[] {
  if (kind === 'prefix') {
    const soundings = PREFIXES.find((one) => one.text === affix)?.soundings ?? [];
    return soundings.map((sounds) => ({ letters: affix, sound: sounds.join('.'), kind }));
  }
  const soundings = findSuffix(affix)?.soundings ?? [];
  return soundings.map(({ sounds }) => ({ letters: affix, sound: sounds.join('.'), kind: 'suffix' }));
}

function stemOf(word: string, { base, affix, kind }: Derivation): number {
  return kind === 'prefix' ? 0 : restoreStem(word, affix).findIndex(({ stem }) => stem === base);
}

function originOf(word: string, derivation: Derivation, sound: string): MadeBy | null {
  const { affix: letters, kind } = derivation;
  const stem = kind === 'suffix' ? stemOf(word, derivation) : 0;
  return stem === -1 ? null : { affix: { letters, sound, kind }, stem, reading: 0, lessened: false };
}

/**
 * Describes a word by its own units. The affix is one of the units if it is fully pronounced (electricity: c, then
 * -ity).
 */
function tellWhole(
  word: string,
  { units, sounds }: AlignedReading,
  derivation: Derivation | undefined,
  aligner: Aligner,
): ReadingRecord {
  const plain = units.map(bare);
  if (!derivation) return { kind: 'whole', units: plain, madeBy: null };
  if (derivation.kind === 'compound') {
    return { kind: 'whole', units: plain, madeBy: originOf(word, derivation, 'weak') };
  }
  const { affix, kind } = derivation;
  const swallowed =
    kind === 'suffix' && plain.at(-1)!.letters.length > affix.length && plain.at(-1)!.letters.endsWith(affix);
  let best: { units: Correspondence[]; cost: number; sound: string } | null = null;
  for (const form of swallowed ? [] : formsOf(derivation)) {
    const own = form.sound.split('.');
    const [rest, restSounds] =
      kind === 'prefix'
        ? [word.slice(affix.length), sounds.slice(own.length)]
        : [word.slice(0, -affix.length), sounds.slice(0, -own.length)];
    const heard = kind === 'prefix' ? sounds.slice(0, own.length) : sounds.slice(-own.length);
    if (rest === '' || !sameSounds(own, heard)) continue;
    const aligned = aligner.align(rest, restSounds);
    if (!aligned || (best && best.cost <= aligned.cost)) continue;
    const unit: Correspondence = { letters: affix, sound: form.sound };
    const rests = aligned.units.map(bare);
    best = {
      units: kind === 'prefix' ? [unit, ...rests] : [...rests, unit],
      cost: aligned.cost,
      sound: form.sound,
    };
  }
  if (best) return { kind: 'whole', units: best.units, madeBy: originOf(word, derivation, best.sound) };
  return { kind: 'whole', units: plain, madeBy: originOf(word, derivation, plain.at(-1)!.sound) };
}

function bare({ letters, sound }: Correspondence): Correspondence {
  return { letters, sound };
}
