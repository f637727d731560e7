import type { patterns as english } from '../en/patterns.ts';
import type { Translated } from '../translation.ts';

/** What patterns are called; `names.json` has the same in English, and a test holds the two together. */
export const patterns: Translated<typeof english> = {
  asIn: '{spelling} como en {word}',
  silentAsIn: '{spelling} muda como en {word}',
  consonantLeAsIn: 'consonante-{spelling} como en {word}',
  suffixSaid: 'sufijo {spelling} que suena /{word}/',
  suffix: 'sufijo {spelling}',
  prefix: 'prefijo {spelling}',
  silent: '{spelling} muda',
  atStart: '{spelling} al principio de palabra',
  atEnd: '{spelling} al final de palabra',
  closedInLonger: 'sílabas cerradas en palabras más largas',
  openInLonger: 'sílabas abiertas en palabras más largas',
  vowelConsonantEInLonger: 'sílabas vocal-consonante-e en palabras más largas',
  vowelTeamInLonger: 'sílabas con grupo vocálico en palabras más largas',
  rControlledInLonger: 'sílabas de vocal con r en palabras más largas',
  twoSyllables: 'palabras de dos sílabas',
  threeSyllables: 'palabras de tres o más sílabas',
  doubleConsonant: 'doblar la consonante final',
  dropE: 'quitar la e',
  changeYToI: 'cambiar y por i',
  compound: 'palabras compuestas',
  contraction: 'contracciones',
  possessive: 'posesivos',
  irregular: 'grafía irregular',
  otherAtStart: 'otros grupos consonánticos al principio de palabra',
  otherAtEnd: 'otros grupos consonánticos al final de palabra',
  threeAtEnd: 'grupos de tres consonantes al final de palabra',
};
