import { describeError } from '../../analyze/index.ts';
import { say } from '../../wording/say.ts';
import { browser } from '../browser.ts';
import { RemoteFault } from './hear-messages.ts';

/**
 * Says what happened, in a sentence with the next step, and gives what a person who mends it needs to know (`listDetails`).
 * The sentence names no cause but the one the error names.
 */
export function describeFault(error: unknown): { readonly why: string; readonly details: string } {
  const why = error instanceof Error ? error.message : String(error);
  const told = error instanceof RemoteFault ? error.details : describeError(error);
  return { why: say('panel.failed', { why }), details: listDetails([told]) };
}

/** The version of the extension, the browser and what went wrong, as lines. Nothing of the group. */
export function listDetails(faults: readonly string[]): string {
  const { version } = browser.runtime.getManifest();
  return [`Wordreach ${version}`, navigator.userAgent, '', ...faults].join('\n');
}
