import { useEffect, useRef, useState } from 'preact/hooks';
import type { Sheet } from './make-sheet.ts';
import './print.css';
import { PrintOptions } from './print-options.tsx';
import { PrintSheet } from './print-sheet.tsx';
import type { SheetChoices } from './sheet-choices.ts';

interface PrintViewProps {
  readonly sheet: Sheet;
  readonly choices: SheetChoices;
  readonly canMark: boolean;
  readonly onChange: (choices: SheetChoices) => void;
  readonly onClose: () => void;
}

/** The sheet as it will be printed, beside what can be chosen about it. On paper only the sheet is left. */
export function PrintView({ sheet, choices, canMark, onChange, onClose }: PrintViewProps) {
  const [pages, setPages] = useState(1);
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
            Back to the passage
          </button>
        </p>
        <p class="quiet" role="status">
          {pages === 1 ? 'One page.' : `${pages} pages.`}
        </p>
        <PrintOptions choices={choices} canMark={canMark} onChange={onChange} />
        <p class="quiet">
          If the browser puts its own lines at the head and foot, untick them in its print window.
        </p>
      </form>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: wider than a narrow window, it is scrolled by keyboard too */}
      <section class="print-preview" aria-label="The sheet" tabIndex={0}>
        <PrintSheet sheet={sheet} choices={choices} onPages={setPages} />
      </section>
    </main>
  );
}
