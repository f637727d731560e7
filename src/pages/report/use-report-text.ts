import { useEffect, useState } from 'preact/hooks';
import { watchPassages } from '../../host/store/passages-store.ts';
import { StorageFault } from '../../host/store/store-item.ts';
import { say } from '../../wording/say.ts';
import { loadReportText, ReportFault, type ReportText } from './report-text.ts';

/**
 * Returns the text that the address names, or the reason why there is none. Returns null while the text is read. A
 * passage is read again when it is saved.
 */
export function useReportText(): ReportText | { readonly fault: string } | null {
  const [found, setFound] = useState<ReportText | { readonly fault: string } | null>(null);
  useEffect(() => {
    const controller = new AbortController();
    const { signal } = controller;
    const read = (): void => {
      const address = location.hash;
      const show = (value: ReportText | { readonly fault: string }): void => {
        if (!signal.aborted && location.hash === address) setFound(value);
      };
      loadReportText(address).then(show, (error: unknown) => show({ fault: sayWhyNone(error) }));
    };
    addEventListener('hashchange', read, { signal });
    watchPassages(read, signal);
    read();
    return () => controller.abort();
  }, []);
  return found;
}

function sayWhyNone(error: unknown): string {
  return error instanceof ReportFault || error instanceof StorageFault
    ? error.message
    : say('report.textFailed');
}
