import type { SyllableType } from '../analyze/types.ts';
import { say, type TextId } from '../wording/say.ts';

const NAMES = {
  closed: 'ui.closed',
  open: 'ui.open',
  vce: 'ui.vowelConsonantE',
  team: 'ui.vowelTeam',
  'r-controlled': 'ui.rControlled',
  'consonant-le': 'ui.consonantLe',
  other: 'ui.otherType',
} as const satisfies Record<SyllableType, TextId>;

/** What the trade calls a type of syllable. */
export function syllableName(type: SyllableType): string {
  return say(NAMES[type]);
}
