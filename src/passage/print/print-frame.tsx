import type { ComponentChildren } from 'preact';
import { useEffect, useLayoutEffect, useRef } from 'preact/hooks';
import { say } from '../../wording/say.ts';
import './print.css';

interface PrintFrameProps {
  /** The label of the button that closes the view: `Back to the passage`. */
  readonly back: string;
  readonly onClose: () => void;
  /** The choices for the sheet. */
  readonly options: ComponentChildren;
  /** The sheet. */
  readonly children: ComponentChildren;
}

/** Shows a sheet as it will be printed, beside the controls for its choices. Only the sheet is printed on paper. */
export function PrintFrame({ back, onClose, options, children }: PrintFrameProps) {
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => {
    document.body.classList.add('has-print-view');
    return () => document.body.classList.remove('has-print-view');
  }, []);
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
          {say('print.title')}
        </h1>
        <p class="row">
          <button type="button" class="action" onClick={() => print()}>
            {say('print.printOrSave')}
          </button>
          <button type="button" class="plain" onClick={onClose}>
            {back}
          </button>
        </p>
        {options}
        <p class="quiet">{say('print.browserLines')}</p>
      </form>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: wider than a narrow window, it is scrolled by keyboard too */}
      <section class="print-preview" aria-label={say('print.theSheet')} tabIndex={0}>
        {children}
      </section>
    </main>
  );
}
