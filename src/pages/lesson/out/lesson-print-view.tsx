import type { ComponentChildren } from 'preact';
import { useEffect } from 'preact/hooks';
import { PrintFrame } from '../../../passage/print/print-frame.tsx';
import { PrintOptions } from '../../../passage/print/print-options.tsx';
import { FONTS, GAPS, type SheetChoices } from '../../../passage/print/sheet-choices.ts';
import './lesson-print.css';
import { say } from '../../../wording/say.ts';
import type { Audience, sheetLanguage } from './printed-part.ts';

interface LessonPrintViewProps {
  readonly language: ReturnType<typeof sheetLanguage>;
  readonly audience: Audience;
  readonly choices: SheetChoices;
  readonly onAudience: (audience: Audience) => void;
  readonly onChange: (choices: SheetChoices) => void;
  readonly onClose: () => void;
  readonly onShown: () => void;
  /** The content of the paper. */
  readonly children: ComponentChildren;
}

/** The lesson as it will be printed, for pupils or as the key. */
export function LessonPrintView(props: LessonPrintViewProps) {
  const { language, audience, choices, onAudience, onChange, onClose, onShown, children } = props;
  useEffect(onShown, []);
  return (
    <PrintFrame
      back={say('lesson.back')}
      onClose={onClose}
      options={
        <>
          <label class="print-option">
            <span>{say('lesson.whichSheet')}</span>
            <select
              class="field"
              value={audience}
              onChange={(event) => onAudience(event.currentTarget.value as Audience)}
            >
              <option value="pupils">{say('lesson.forPupils')}</option>
              <option value="key">{say('lesson.forYou')}</option>
            </select>
          </label>
          <PrintOptions choices={choices} canMark={false} onChange={onChange} only="lesson" />
        </>
      }
    >
      <article
        class={`paper lesson-paper lesson-paper-${choices.paper}`}
        style={paperStyle(choices)}
        lang={language}
      >
        {children}
      </article>
    </PrintFrame>
  );
}

/** The values that `lesson-paper.css` takes from the choices. */
export function paperStyle({ font, size, gaps, lineSpacing }: SheetChoices): Record<string, string> {
  return {
    '--sheet-font': FONTS[font].css,
    '--sheet-size': `${size}pt`,
    '--sheet-leading': String(lineSpacing),
    '--sheet-letters': `${GAPS[gaps].letters}em`,
    '--sheet-words': `${GAPS[gaps].words}em`,
  };
}
