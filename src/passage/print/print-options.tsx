import type { ComponentChildren } from 'preact';
import { say, type TextId } from '../../wording/say.ts';
import {
  type FONTS,
  type GAPS,
  LINE_SPACINGS,
  type MARGINS,
  type PAPERS,
  type SheetChoices,
  SIZES,
} from './sheet-choices.ts';

interface PrintOptionsProps {
  readonly choices: SheetChoices;
  /** Whether the word table is loaded, so that words can be marked. */
  readonly canMark: boolean;
  /** Set for a lesson. A lesson has no running text, so it has no choices about lines and words. */
  readonly only?: 'lesson';
  readonly onChange: (choices: SheetChoices) => void;
}

interface Option {
  readonly value: string | number;
  readonly label: string;
}

type Names<Value extends string | number> = Readonly<
  Record<Value, Extract<TextId, `print.${'font' | 'gaps' | 'lines' | 'beside' | 'paper'}${string}`>>
>;

const FONT_NAMES: Names<keyof typeof FONTS> = {
  beginner: 'print.fontBeginner',
  book: 'print.fontBook',
  plain: 'print.fontPlain',
  wide: 'print.fontWide',
  round: 'print.fontRound',
};
const GAP_NAMES: Names<keyof typeof GAPS> = {
  usual: 'print.gapsUsual',
  wider: 'print.gapsWider',
  widest: 'print.gapsWidest',
};
const LINE_NAMES: Names<(typeof LINE_SPACINGS)[number]> = {
  1.4: 'print.linesClose',
  1.8: 'print.linesOpen',
  2.4: 'print.linesWide',
};
const MARGIN_NAMES: Names<(typeof MARGINS)[number]> = {
  none: 'print.besideNothing',
  numbers: 'print.besideNumber',
  counts: 'print.besideCount',
};
const PAPER_NAMES: Names<keyof typeof PAPERS> = { a4: 'print.paperA4', letter: 'print.paperLetter' };

/** The teacher's choices for a sheet. */
export function PrintOptions({ choices, canMark, only, onChange }: PrintOptionsProps) {
  const select = (key: keyof SheetChoices, label: string, options: readonly Option[]) => (
    <label class="print-option">
      <span>{label}</span>
      <select
        class="field"
        value={String(choices[key])}
        onChange={(event) => {
          const picked = options.find(({ value }) => String(value) === event.currentTarget.value);
          if (picked) onChange({ ...choices, [key]: picked.value });
        }}
      >
        {options.map(({ value, label }) => (
          <option key={value} value={String(value)}>
            {label}
          </option>
        ))}
      </select>
    </label>
  );
  const tick = (key: keyof SheetChoices, label: ComponentChildren, disabled = false) => (
    <label class="tick">
      <input
        type="checkbox"
        checked={choices[key] === true}
        disabled={disabled}
        onChange={(event) => onChange({ ...choices, [key]: event.currentTarget.checked })}
      />{' '}
      {label}
    </label>
  );
  const sizes = SIZES.map((points) => ({ value: points, label: say('print.points', { points }) }));
  const spacings = LINE_SPACINGS.map((value) => ({ value, label: say(LINE_NAMES[value]) }));
  return (
    <>
      <fieldset class="print-group">
        <legend>{say('print.letters')}</legend>
        {select('size', say('print.size'), sizes)}
        {select('font', say('print.font'), nameAll(FONT_NAMES))}
        {select('gaps', say('print.gaps'), nameAll(GAP_NAMES))}
        {select('lineSpacing', say('print.lineSpacing'), spacings)}
      </fieldset>
      <fieldset class="print-group">
        <legend>{say('print.page')}</legend>
        {!only && select('margin', say('print.besideEachLine'), nameAll(MARGIN_NAMES))}
        {select('paper', say('print.paper'), nameAll(PAPER_NAMES))}
        {!only && tick('storyWords', say('print.storyWordsInABox'))}
        {tick('nameLine', say('print.nameLine'))}
      </fieldset>
      {!only && (
        <fieldset class="print-group">
          <legend>{say('print.marks')}</legend>
          {tick('fresh', say('print.underlineFresh'), !canMark)}
          {tick('dots', say('print.dots'), !canMark)}
          {tick('vowels', say('print.vowels'), !canMark)}
        </fieldset>
      )}
    </>
  );
}

function nameAll(names: Names<string>): Option[] {
  return Object.entries(names).map(([value, id]) => ({ value, label: say(id) }));
}
