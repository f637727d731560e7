import { useState } from 'preact/hooks';
import type { Sheet } from './make-sheet.ts';
import { PrintFrame } from './print-frame.tsx';
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

/** A passage as it will be printed, page by page. */
export function PrintView({ sheet, choices, canMark, onChange, onClose }: PrintViewProps) {
  const [pages, setPages] = useState(1);
  return (
    <PrintFrame
      back="Back to the passage"
      onClose={onClose}
      options={
        <>
          <p class="quiet" role="status">
            {pages === 1 ? 'One page.' : `${pages} pages.`}
          </p>
          <PrintOptions choices={choices} canMark={canMark} onChange={onChange} />
        </>
      }
    >
      <PrintSheet sheet={sheet} choices={choices} onPages={setPages} />
    </PrintFrame>
  );
}
