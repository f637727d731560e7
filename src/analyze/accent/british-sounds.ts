import { hasVowel } from '../alignment/sounds.ts';
import type { BuiltWord, WordSpelling } from '../build/built-word.ts';

/** Vowels before r as they are heard when the r is not. */
const WITHOUT_R: Readonly<Record<string, string>> = {
  AA: 'AR',
  AO: 'OR',
  EH: 'EA',
  IH: 'IA',
  IY: 'IA',
  UH: 'UA',
  AY: 'AYA',
  AW: 'AWA',
};

/** How each spelling of a whole word is heard in British: r only before a vowel, and its vowels as they are without it. */
export function hearBritish({ parts }: BuiltWord): string[] {
  const spellings = parts.flatMap(({ role, spellings: own }, i) => {
    if (role === 'base') return own;
    // are and n't are one syllable where the r is not heard; so are were and n't.
    const afterR = /R$/.test(parts[i - 1]?.spellings.at(-1)?.sound ?? '');
    return own.map((one) => {
      if (role === 'clitic' && afterR && one.letters === "n't") return { ...one, heard: 'N.T' };
      return one.sound === 'ER' ? { ...one, heard: 'AX' } : one;
    });
  });
  const heard: string[] = [];
  let beforeVowel = false;
  for (let i = spellings.length - 1; i >= 0; i--) {
    const one = spellings[i]!;
    const said = hearOne(one, spellings[i - 1], spellings[i + 1], beforeVowel, heard[i + 1] === '-');
    heard[i] = said;
    if (said !== '-') beforeVowel = hasVowel(said.split('.')[0]!);
  }
  return heard;
}

function hearOne(
  { letters, sound, heard }: WordSpelling,
  before: WordSpelling | undefined,
  after: WordSpelling | undefined,
  beforeVowel: boolean,
  beforeSilent: boolean,
): string {
  if (heard === undefined && isSaidAlike(sound)) return sound;
  const r = beforeVowel && /r(e|h|rh)?$/.test(letters) ? '.R' : '';
  if (heard !== undefined) return heard + r;
  // bury, irregular: a short vowel and the r of the next syllable.
  if (/^(ur:EH|ir:IH)\.R$/.test(`${letters}:${sound}`)) return sound;
  if (/^([aeo]ry):/.test(`${letters}:`) && sound.endsWith('R.IY')) return 'AX.R.IY';
  if (sound === 'R') return beforeVowel || before === undefined ? 'R' : '-';
  if (sound === 'ER') return `ER${r}`;
  if (
    /^(a:EH|e:IH|ae:EH|ey:EH)$/.test(`${letters}:${sound}`) &&
    after?.sound === 'R' &&
    (before || beforeSilent || sound === 'EH')
  )
    return sound === 'EH' ? 'EA' : 'IA';
  if (/^(u|eu|ou):(Y\.)?UH$/.test(`${letters}:${sound}`) && after?.sound === 'R')
    return sound.replace('UH', 'UA');
  // souvenir, and where: the vowel and an r that is not heard.
  if (beforeSilent && after?.sound === 'R' && WITHOUT_R[sound]) return WITHOUT_R[sound]!;
  if (`${letters}:${sound}` === 'ure:UH.R') return `OR${r}`;
  const parts = sound.split('.');
  const said: string[] = [];
  for (const [i, part] of parts.entries()) {
    const next = parts[i + 1];
    const nextIsVowel = next === undefined ? beforeVowel : hasVowel(next);
    if (part === 'R' && i > 0) {
      if (nextIsVowel) said.push('R');
      continue;
    }
    if (part === 'ER') said.push(parts.length > 1 ? 'AX' : 'ER', ...(nextIsVowel ? ['R'] : []));
    else if (next === 'R' && WITHOUT_R[part]) said.push(WITHOUT_R[part]!);
    else if (part === 'AO') said.push('OR');
    else if (part === 'AA') said.push(isShortO(letters, before) ? 'AA' : 'AR');
    else said.push(part);
  }
  return said.join('.');
}

/** The sound AA is that of dock where an o or a w spells it, else that of father: swan, knowledge; not spa. */
function isShortO(letters: string, before: WordSpelling | undefined): boolean {
  if (/o/.test(letters) && !letters.startsWith('oi')) return true;
  return letters === 'a' ? /(^|\.)W$/.test(before?.sound ?? '') : /^(au|en|e)/.test(letters);
}

/** Whether a sound has nothing that is heard otherwise: no r, and none of the vowels it changes. */
function isSaidAlike(sound: string): boolean {
  let is = alike.get(sound);
  if (is === undefined) {
    is = !/A[AO]|R\b|EH|IH|UH/.test(sound);
    alike.set(sound, is);
  }
  return is;
}
/** The few hundred sounds of units. */
const alike = new Map<string, boolean>();
