import { useEffect, useLayoutEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { Sheet } from './make-sheet.ts';
import { PageView } from './page-view.tsx';
import { setPages } from './set-pages.ts';
import { FONTS, GAPS, type SheetChoices } from './sheet-choices.ts';
import { isSheetFontLoaded, loadSheetFont } from './sheet-font.ts';
import { listParts, type SheetPiece } from './sheet-parts.ts';

interface PrintSheetProps {
  readonly sheet: Sheet;
  readonly choices: SheetChoices;
  /** Receives the number of pages. */
  readonly onPages?: (count: number) => void;
}

/** The paper pages of a passage, as they will be printed. */
export function PrintSheet(props: PrintSheetProps) {
  const [isLoaded, setLoaded] = useState(isSheetFontLoaded);
  useEffect(() => void loadSheetFont().then(() => setLoaded(true)), []);
  // The sheet is measured again once the bundled font is loaded.
  return <MeasuredSheet key={JSON.stringify([props.sheet, props.choices, isLoaded])} {...props} />;
}

/**
 * Lays out a sheet twice. The first layout is one endless page, which shows where the browser breaks the lines. The
 * second layout has the same lines, page by page. The component measures only once.
 */
function MeasuredSheet({ sheet, choices, onPages }: PrintSheetProps) {
  const { paper, font, gaps, size, lineSpacing, margin } = choices;
  const parts = useMemo(() => listParts(sheet), []);
  const first = useRef<HTMLElement>(null);
  const [pages, setMeasured] = useState<readonly SheetPiece[][] | null>(null);
  useLayoutEffect(() => {
    const measured = setPages(first.current!, parts, choices);
    setMeasured(measured);
    onPages?.(measured.length);
  }, []);
  const style = {
    '--sheet-font': FONTS[font].css,
    '--sheet-size': `${size}pt`,
    '--sheet-leading': lineSpacing,
    letterSpacing: `${GAPS[gaps].letters}em`,
    wordSpacing: `${GAPS[gaps].words}em`,
  };
  const shown = pages ?? [parts.map((part): SheetPiece => ({ part, lines: null, goesOn: false }))];
  return (
    <>
      {shown.map((pieces, i) => (
        <article
          key={i}
          ref={i === 0 ? first : undefined}
          class={`sheet-paper sheet-page sheet-${paper}`}
          style={style}
          lang="en"
          dir="ltr"
          aria-label={shown.length > 1 ? `Page ${i + 1}` : undefined}
        >
          <PageView pieces={pieces} margin={margin} source={sheet.source} number={i + 1} />
        </article>
      ))}
    </>
  );
}
