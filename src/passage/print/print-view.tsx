import { useState } from 'preact/hooks';
import { say } from '../../wording/say.ts';
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
      back={say('print.backToThePassage')}
      onClose={onClose}
      options={
        <>
          <p class="quiet" role="status">
            {say('print.pages', { count: pages })}
          </p>
          <PrintOptions choices={choices} canMark={canMark} onChange={onChange} />
        </>
      }
    >
      <PrintSheet sheet={sheet} choices={choices} onPages={setPages} />
    </PrintFrame>
  );
}
