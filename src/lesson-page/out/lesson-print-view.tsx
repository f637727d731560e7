import type { ComponentChildren } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import '../../print/print.css';
import { PrintOptions } from '../../print/print-options.tsx';
import { FONTS, GAPS, type SheetChoices } from '../../print/sheet-choices.ts';
import './lesson-print.css';
import type { Audience } from './printed-part.ts';

interface LessonPrintViewProps {
  readonly audience: Audience;
  readonly choices: SheetChoices;
  readonly onAudience: (audience: Audience) => void;
  readonly onChange: (choices: SheetChoices) => void;
  readonly onClose: () => void;
  /** The paper. */
  readonly children: ComponentChildren;
}

/** The lesson as it will be printed, beside what can be chosen about it. On paper only the lesson is left. */
export function LessonPrintView(props: LessonPrintViewProps) {
  const { audience, choices, onAudience, onChange, onClose, children } = props;
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    scrollTo(0, 0);
    heading.current?.focus();
  }, []);
  return (
    <main
      class="print-view"
      onKeyDown={(event) => {
        if (event.key === 'Escape' && !event.defaultPrevented) onClose();
      }}
    >
      <form class="print-side" onSubmit={(event) => event.preventDefault()}>
        <h1 ref={heading} tabIndex={-1}>
          Print
        </h1>
        <p class="row">
          <button type="button" class="action" onClick={() => print()}>
            Print or save as PDF
          </button>
          <button type="button" class="plain" onClick={onClose}>
            Back to the lesson
          </button>
        </p>
        <label class="print-option">
          <span>Which sheet</span>
          <select
            class="field"
            value={audience}
            onChange={(event) => onAudience(event.currentTarget.value as Audience)}
          >
            <option value="pupils">For pupils, with lines to write on</option>
            <option value="key">For you, with the answers</option>
          </select>
        </label>
        <PrintOptions choices={choices} canMark={false} onChange={onChange} only="lesson" />
      </form>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: wider than a narrow window, it is scrolled by keyboard too */}
      <section class="print-preview" aria-label="The sheet" tabIndex={0}>
        <article
          class={`paper lesson-paper lesson-paper-${choices.paper}`}
          style={paperStyle(choices)}
          lang="en"
        >
          {children}
        </article>
      </section>
    </main>
  );
}

/** What `lesson-paper.css` takes from the choices. */
export function paperStyle({ font, size, gaps, lineSpacing }: SheetChoices): Record<string, string> {
  return {
    '--sheet-font': FONTS[font].css,
    '--sheet-size': `${size}pt`,
    '--sheet-leading': String(lineSpacing),
    '--sheet-letters': `${GAPS[gaps].letters}em`,
    '--sheet-words': `${GAPS[gaps].words}em`,
  };
}
