import type { PatternId } from '../analyze/types.ts';
import { patternLabel } from '../marks/pattern-label.ts';
import { say, type TextId } from '../wording/say.ts';

/** Forms of English labels that several patterns share. The first form that fits is used. */
const WITH_WORD = [
  [/^silent (?<spelling>.+) as in (?<word>.+)$/, 'patterns.silentAsIn'],
  [/^consonant-(?<spelling>le) as in (?<word>.+)$/, 'patterns.consonantLeAsIn'],
  [/^(?<spelling>.+) as in (?<word>.+)$/, 'patterns.asIn'],
  [/^suffix (?<spelling>.+) as \/(?<word>.+)\/$/, 'patterns.suffixSaid'],
] as const;
const ALONE = [
  [/^suffix (?<spelling>.+)$/, 'patterns.suffix'],
  [/^prefix (?<spelling>.+)$/, 'patterns.prefix'],
  [/^root (?<spelling>.+)$/, 'patterns.root'],
  [/^silent (?<spelling>.+)$/, 'patterns.silent'],
  [/^(?<spelling>[a-z]+) at the start of a word$/, 'patterns.atStart'],
  [/^(?<spelling>[a-z]+) at the end of a word$/, 'patterns.atEnd'],
] as const;
/** The patterns that have a text of their own. */
const BY_ID = {
  'type-closed': 'patterns.closedInLonger',
  'type-open': 'patterns.openInLonger',
  'type-vce': 'patterns.vowelConsonantEInLonger',
  'type-team': 'patterns.vowelTeamInLonger',
  'type-r': 'patterns.rControlledInLonger',
  'syllables-2': 'patterns.twoSyllables',
  'syllables-3': 'patterns.threeSyllables',
  'change-double': 'patterns.doubleConsonant',
  'change-drop-e': 'patterns.dropE',
  'change-y-to-i': 'patterns.changeYToI',
  compound: 'patterns.compound',
  contraction: 'patterns.contraction',
  possessive: 'patterns.possessive',
  'change-double-longer': 'patterns.doubleInLonger',
  'change-f-to-v': 'patterns.changeFToV',
  'contraction-not': 'patterns.contractionNot',
  'contraction-will': 'patterns.contractionWill',
  'contraction-is': 'patterns.contractionIs',
  'contraction-have': 'patterns.contractionHave',
  'contraction-would': 'patterns.contractionWould',
  'contraction-are': 'patterns.contractionAre',
  'possessive-one': 'patterns.possessiveOne',
  'possessive-several': 'patterns.possessiveSeveral',
  irregular: 'patterns.irregular',
  'start-other': 'patterns.otherAtStart',
  'end-other': 'patterns.otherAtEnd',
  'end-three': 'patterns.threeAtEnd',
} as const satisfies Record<string, TextId>;

/**
 * Returns the name of a pattern in the reader's language, such as `ai as in rain`. Returns the id if this version does
 * not know the pattern.
 */
export function patternName(id: PatternId): string {
  const own = BY_ID[id as keyof typeof BY_ID];
  if (own) return say(own);
  const label = patternLabel(id);
  for (const [like, text] of WITH_WORD) {
    const holes = like.exec(label)?.groups;
    if (holes) return say(text, { spelling: holes.spelling!, word: holes.word! });
  }
  for (const [like, text] of ALONE) {
    const holes = like.exec(label)?.groups;
    if (holes) return say(text, { spelling: holes.spelling! });
  }
  return label;
}
