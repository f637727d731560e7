import type { CountsAs } from '../analyze/types.ts';
import { say, type TextId } from '../wording/say.ts';

const WAYS = [
  ['judged', 'card.asJudged'],
  ['by-sight', 'card.bySight'],
  ['name', 'card.name'],
  ['skip', 'card.skip'],
] as const satisfies readonly (readonly [as: CountsAs, text: TextId])[];

interface CountsAsProps {
  readonly word: string;
  /** How the word counts for the group now. */
  readonly counts: CountsAs;
  /** `says` describes the change, for the line with Undo. */
  readonly onCounts: (as: CountsAs, says: string) => void;
}

/** The choice of how a word counts for the group. The choice is shown, changed and changed back in one place. */
export function CountsAsChoice({ word, counts, onCounts }: CountsAsProps) {
  return (
    <fieldset class="counts-as">
      <legend class="quiet">{say('card.countsAs')}</legend>
      {WAYS.map(([as, text]) => (
        <label key={as} class="tick">
          <input
            type="radio"
            name="counts-as"
            checked={counts === as}
            onChange={() => onCounts(as, say('card.wordCounts', { word, as: say(text) }))}
          />{' '}
          {say(text)}
        </label>
      ))}
    </fieldset>
  );
}
