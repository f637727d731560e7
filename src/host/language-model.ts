/// <reference types="dom-chromium-ai" />
import { say } from '../wording/say.ts';

/**
 * The state of the browser's own language model, which runs on this machine. Its interface is the Prompt API
 * (webmachinelearning.github.io/prompt-api), and no other file uses it. `none`: the browser offers no such interface.
 */
export type ModelState = 'none' | 'unavailable' | 'downloadable' | 'downloading' | 'available';

/** A language model that is ready. */
export interface BrowserModel {
  /** The model's answer to a text, in the form of the schema. Rejects with `ModelFault`, or the reason of the signal. */
  ask(text: string, schema: Record<string, unknown>, signal: AbortSignal): Promise<string>;
  /** Closes the model and aborts open questions. */
  close(): void;
}

/** Thrown when the model could not be opened or did not answer. The message is one sentence with the next step. */
export class ModelFault extends Error {
  override name = 'ModelFault';

  /** Whether the text was too long for the model. */
  get isTooLong(): boolean {
    return nameOf(this.cause) === 'QuotaExceededError';
  }
}

/** The progress of a download, from 0 to 1. `bytes` is the total size, if the browser tells it. */
export interface Download {
  readonly share: number;
  readonly bytes: number | null;
}

const LANGUAGES = { expectedInputs: [text('en')], expectedOutputs: [text('en')] };

function text(language: string): LanguageModelExpected {
  return { type: 'text', languages: [language] };
}

/** Returns whether there is a model, and whether the browser has to download it first. Never rejects. */
export async function findModelState(): Promise<ModelState> {
  if (typeof LanguageModel === 'undefined') return 'none';
  try {
    const state: string = await LanguageModel.availability(LANGUAGES);
    return /^(?:downloadable|downloading|available)$/.test(state) ? (state as ModelState) : 'unavailable';
  } catch {
    return 'unavailable';
  }
}

/**
 * Opens the model. If the browser has to download it first, it requires a click or key press of the teacher before the
 * download. Rejects with `ModelFault`, or with the reason of the signal.
 */
export async function openModel(
  instructions: string,
  onDownload: (download: Download) => void,
  signal: AbortSignal,
): Promise<BrowserModel> {
  if (typeof LanguageModel === 'undefined') throw new ModelFault(say('host.noModel'));
  const session = await faulty(
    () =>
      LanguageModel.create({
        ...LANGUAGES,
        initialPrompts: [{ role: 'system', content: instructions }],
        monitor: (monitor) =>
          monitor.addEventListener('downloadprogress', ({ loaded, total }) => {
            // Browsers today report only the share, as a part of 1. A browser that reports bytes is supported too.
            if (total > 0)
              onDownload({ share: Math.min(1, loaded / total), bytes: total > 1 ? total : null });
          }),
        signal,
      }),
    signal,
  );
  const close = (): void => void session.destroy();
  signal.addEventListener('abort', close, { once: true });
  return {
    close,
    async ask(question, schema, asked) {
      // Each question goes to a copy of the session, so that earlier questions do not fill the model's memory.
      const copy = await faulty(() => session.clone({ signal: asked }), asked);
      try {
        return await faulty(
          () => copy.prompt(question, { responseConstraint: schema, signal: asked }),
          asked,
        );
      } finally {
        copy.destroy();
      }
    },
  };
}

/** Returns the model's result. Stops waiting as soon as the signal aborts, even if the model ignores the signal. */
async function faulty<T>(start: () => Promise<T>, signal: AbortSignal): Promise<T> {
  signal.throwIfAborted();
  let abort = (): void => undefined;
  const aborted = new Promise<never>((_, reject) => {
    abort = () => reject(signal.reason);
    signal.addEventListener('abort', abort, { once: true });
  });
  try {
    return await Promise.race([start(), aborted]);
  } catch (error) {
    if (signal.aborted) throw signal.reason;
    throw new ModelFault(explain(error), { cause: error });
  } finally {
    signal.removeEventListener('abort', abort);
  }
}

/** Explains an error. The interface gives its own errors the names that are compared. */
function explain(error: unknown): string {
  const name = nameOf(error);
  if (name === 'QuotaExceededError') return say('host.modelFull');
  if (name === 'NotSupportedError') return say('host.modelLanguage');
  if (name === 'NotAllowedError') return say('host.modelNotAllowed');
  if (name === 'NetworkError') return say('host.modelNotDownloaded');
  return say('host.modelFailed', { why: error instanceof Error ? error.message : String(error) });
}

function nameOf(error: unknown): string {
  return error instanceof Error || error instanceof DOMException ? error.name : '';
}
