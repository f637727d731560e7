import { useCopied } from '../../ui/use-copied.ts';
import { say } from '../../wording/say.ts';

interface FaultDetailsProps {
  readonly says: string;
  /** The details for a person who fixes the fault. */
  readonly details: string;
  readonly onRetry: () => void;
}

/** Reports a fault in one sentence, with buttons to try again and to copy the details needed to fix the fault. */
export function FaultDetails({ says, details, onRetry }: FaultDetailsProps) {
  const { copied, copy } = useCopied(details);
  return (
    <div class="note" role="status">
      <p>{says}</p>
      <p class="page-tools">
        <button type="button" class="plain" onClick={onRetry}>
          {say('panel.tryAgain')}
        </button>
        <button type="button" class="plain" onClick={copy}>
          {say('panel.copyDetails')}
        </button>
      </p>
      {copied === true && <p class="quiet">{say('panel.detailsCopied')}</p>}
      {copied === false && (
        <>
          <p class="quiet">{say('panel.detailsNotCopied')}</p>
          <textarea readOnly rows={6} value={details} aria-label={say('panel.details')} />
        </>
      )}
    </div>
  );
}
