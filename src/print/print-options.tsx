import type { ComponentChildren } from 'preact';
import { FONTS, GAPS, LINE_SPACINGS, PAPERS, type SheetChoices, SIZES } from './sheet-choices.ts';

interface PrintOptionsProps {
  readonly choices: SheetChoices;
  /** The word table is there, so that words can be marked. */
  readonly canMark: boolean;
  /** A lesson has no running text, so that nothing is chosen about lines and words. */
  readonly only?: 'lesson';
  readonly onChange: (choices: SheetChoices) => void;
}

const MARGINS = [
  { value: 'none', label: 'Nothing' },
  { value: 'numbers', label: 'The number of the line' },
  { value: 'counts', label: 'Words read by its end' },
] as const;
const sizes = SIZES.map((value) => ({ value, label: `${value} point` }));
const fonts = Object.entries(FONTS).map(([value, { label }]) => ({ value, label }));
const papers = Object.entries(PAPERS).map(([value, { label }]) => ({ value, label }));
const gaps = Object.entries(GAPS).map(([value, { label }]) => ({ value, label }));

/** What the teacher may choose about a sheet. */
export function PrintOptions({ choices, canMark, only, onChange }: PrintOptionsProps) {
  const select = (
    key: keyof SheetChoices,
    label: string,
    options: readonly { value: string | number; label: string }[],
  ) => (
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
  return (
    <>
      <fieldset class="print-group">
        <legend>Letters</legend>
        {select('size', 'Size', sizes)}
        {select('font', 'Font', fonts)}
        {select('gaps', 'Gaps between letters and words', gaps)}
        {select('lineSpacing', 'Space between lines', LINE_SPACINGS)}
      </fieldset>
      <fieldset class="print-group">
        <legend>Page</legend>
        {!only && select('margin', 'Beside each line', MARGINS)}
        {select('paper', 'Paper', papers)}
        {!only && tick('storyWords', 'Story words in a box')}
        {tick('nameLine', 'A line for name and date')}
      </fieldset>
      {!only && (
        <fieldset class="print-group">
          <legend>Marks on words</legend>
          {tick('fresh', 'Underline this step’s words', !canMark)}
          {tick('dots', 'Dots between syllables', !canMark)}
          {tick('vowels', 'Marks over long and short vowels', !canMark)}
        </fieldset>
      )}
    </>
  );
}
