import type { Reading } from '../../analyze/types.ts';
import { readSourceRows } from '../read-source-rows.ts';
import type { Synset } from '../swap/read-synsets.ts';
import { shortenMeaning } from './shorten-meaning.ts';

/** A sense of a word in WordNet's order, with how often it was met. */
export interface Sense {
  readonly synset: Synset;
  readonly count: number;
}

/** Another sense than the first is taken where it is met at least this share as often: lap, but not a rare one. */
const NEXT_SENSE = 0.5;
/** A form of another word has a meaning of its own where it was met so often in one (SemCor): meeting; not walking. */
const OWN_SENSE = 15;
const FORMS = /^(?:s|es|ed|ing|est)$/;

/**
 * The meaning of a word by its senses as one part of speech: that of the commonest whose definition can be cut short, uses plain
 * words only and not the word itself. Empty where there is none, for forms of other words (nets, walking) and for what is
 * a name in that sense (windows).
 */
export function chooseMeaning(
  word: string,
  senses: readonly Sense[],
  { base, affixes }: Pick<Reading, 'base' | 'affixes'>,
  isPlain: (word: string) => boolean,
): string {
  const met = senses.reduce((sum, { count }) => sum + count, 0);
  const form = affixes.at(-1)?.text ?? '';
  if (base !== null && FORMS.test(form) && (/s$/.test(form) || met < OWN_SENSE)) return '';
  const own = senses.filter(({ synset }) => synset.words.includes(word) && !synset.coarse);
  const most = own[0]?.count ?? 0;
  for (const { synset } of own.filter(
    (sense, i) => i === 0 || (most > 0 && sense.count >= most * NEXT_SENSE),
  )) {
    const meaning = shortenMeaning(synset.definition);
    const words: readonly string[] = meaning.toLowerCase().match(/[a-z]+/g) ?? [];
    if (meaning !== '' && words.every((each) => isPlain(each) && !isOf(each, word))) return meaning;
  }
  return '';
}

/** Whether a word is another or a form of it: leaps of leap, hoping of hope; not careful of car. */
function isOf(form: string, word: string): boolean {
  if (!form.startsWith(word.slice(0, -1))) return false;
  const stem = word.replace(/[ey]$/, '');
  return new RegExp(`^${stem}(?:${stem.at(-1)})?(?:e|y|s|es|ies|ied|ed|d|ing|er|ers|r|ly)?$`).test(form);
}

/** Our own meanings, by word (`meanings.tsv`). */
export function readOwnMeanings(): ReadonlyMap<string, string> {
  return new Map(readSourceRows('meanings.tsv') as [string, string][]);
}
