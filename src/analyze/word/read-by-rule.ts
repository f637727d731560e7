import type { BuiltWord, WordSpelling } from '../build/built-word.ts';
import sounds from './rule-sounds.json' with { type: 'json' };

/** The sounds of letters that are read by rule. */
type Sounds = Readonly<Record<string, string>>;
const CONSONANTS: Sounds = sounds.consonants;
const SHORT: Sounds = sounds.short;
const LONG: Sounds = sounds.long;
const TEAMS: Sounds = sounds.teams;

const ONSET =
  /^(squ|thr|shr|str|scr|spl|spr|phr|sch|qu|sh|ch|th|wh|ph|kn|wr|gn|[bcfgkps]l|[bcdfgkpt]r|s[ckmnptw]|tw|dw|[bcdfghjklmnprstvwyz])?/;
const CODA =
  /^(tch|dge|nch|nth|mpt|nks?|ck|sh|ch|th|ng|nk|ff|ll|ss|zz|gg|dd|bb|tt|mb|nce|nse|lse|lve|[lm]f|lk|lp|lt|ld|mp|nd|nt|ft|pt|ct|xt|sk|sp|st|lch|[bcdfgklmnpstvxz])$/;
const TEAM_CODA =
  /^(ch|sh|th|ck|nch|ve|se|ce|ze|the|st|nd|nt|ld|lt|ft|ll|rn|mp|lk|n|m|[bcdfgklmnpstvxz]|rk)?$/;
const VOWEL = /^(igh|air|are|ear|eer|ire|ore|oar|ure|a[iyuwr]|e[eawr]|o[aioyuwer]|u[er]|i[er])/;
const CLUSTER_UNITS =
  /tch|dge|the$|qu|sh|ch|th|wh|ph|kn|wr|gn|ck|ng|mb|bb|dd|ff|gg|ll|ss|tt|zz|ce$|se$|ve$|ze$|[a-z]/g;
const U_WITHOUT_Y = /(r|l|j|ch|s|t|d|n|sh|y)$/;

/**
 * Reads an unlisted short word by the first reading of each spelling. The word has one syllable, which is closed
 * (blick), vowel-consonant-e (trabe), a vowel team (smeech), r-controlled (glarn) or open (fro). Returns null for
 * longer words, rare spellings, and letters in an order that English does not use (tlap).
 */
export function readByRule(word: string): BuiltWord | null {
  if (!/^[a-z]{2,9}$/.test(word)) return null;
  const onset = ONSET.exec(word)![0];
  const rime = word.slice(onset.length);
  const vowel = readRime(rime, onset);
  if (!vowel) return null;
  const spellings = [...readCluster(onset, rime), ...vowel];
  return { parts: [{ role: 'base', spellings }], base: null, affixes: [] };
}

function readRime(rime: string, onset: string): WordSpelling[] | null {
  const split = /^([aeiouy])(th|[bcdfgklmnpstvz])e$/.exec(rime);
  if (split) {
    const [, vowel, consonant] = split as unknown as [string, string, string];
    const sound = vowel === 'u' && U_WITHOUT_Y.test(onset) ? 'UW' : LONG[vowel]!;
    return [
      { letters: `${vowel}_e`, sound },
      { letters: consonant, sound: beforeSilentE(vowel, consonant) },
    ];
  }
  const team = VOWEL.exec(rime)?.[0];
  if (team) {
    const coda = rime.slice(team.length);
    if (!TEAM_CODA.test(coda) || (/^(are|ire|ore|ure)$/.test(team) && coda !== '')) return null;
    // The team ear has another sound before a consonant: fear, but earn.
    const sound = team === 'ear' && coda !== '' ? 'ER' : TEAMS[team]!;
    return [{ letters: team, sound }, ...readCluster(coda, '')];
  }
  const vowel = rime[0] ?? '';
  const coda = rime.slice(1);
  if (!(vowel in SHORT)) return null;
  if (coda === '')
    return /[eoiyu]/.test(vowel) && onset !== '' ? [{ letters: vowel, sound: LONG[vowel]! }] : null;
  return CODA.test(coda) ? [{ letters: vowel, sound: SHORT[vowel]! }, ...readCluster(coda, '')] : null;
}

function beforeSilentE(vowel: string, consonant: string): string {
  if (consonant === 'c') return 'S';
  if (consonant === 'g') return 'JH';
  if (consonant === 'th') return 'DH';
  return consonant === 's' && vowel !== 'a' ? 'Z' : CONSONANTS[consonant]!;
}

/**
 * Reads a cluster of consonants. `next` is the text after the cluster: c and g are soft before e, i, y, and sc is one
 * sound there (scent).
 */
function readCluster(letters: string, next: string): WordSpelling[] {
  if (letters === 'sc' && /^[eiy]/.test(next)) return [{ letters, sound: 'S' }];
  const units = letters.match(CLUSTER_UNITS) ?? [];
  return units.map((unit, i): WordSpelling => {
    const following = units[i + 1] ?? next;
    if ((unit === 'c' || unit === 'g') && /^[eiy]/.test(following))
      return { letters: unit, sound: unit === 'c' ? 'S' : 'JH' };
    if (unit === 'n' && /^[kx]/.test(following)) return { letters: unit, sound: 'NG' };
    return { letters: unit, sound: CONSONANTS[unit]! };
  });
}
