import { describeError } from '../../analyze/index.ts';
import { say } from '../../wording/say.ts';
import { browser } from '../browser.ts';
import { RemoteFault } from './hear-messages.ts';

/**
 * Returns a sentence that says what happened and what to do next, and the details for a person who repairs the fault
 * (`listDetails`). The sentence names only the cause that the error names.
 */
export function describeFault(error: unknown): { readonly why: string; readonly details: string } {
  const why = error instanceof Error ? error.message : String(error);
  const told = error instanceof RemoteFault ? error.details : describeError(error);
  return { why: say('panel.failed', { why }), details: listDetails([told]) };
}

/** Returns the version of the extension, the browser and the faults, as lines. They contain nothing about the group. */
export function listDetails(faults: readonly string[]): string {
  const { version } = browser.runtime.getManifest();
  return [`Wordreach ${version}`, navigator.userAgent, '', ...faults].join('\n');
}
