import { createWorker, OEM, PSM, type Worker } from 'tesseract.js';
import { findLines, type ReadBlock } from './find-lines.ts';
import { type Picture, PictureFault, type PictureProgress, type PictureReading } from './picture-reading.ts';
import { preparePicture } from './prepare-picture.ts';

/**
 * The folder where the build puts the reader's files (`wxt.config.ts`): the worker, the core and the data for English
 * print.
 */
export const READER_FOLDER = '/picture-reader';

export interface ReadOptions {
  readonly signal?: AbortSignal;
  readonly onProgress?: (progress: PictureProgress) => void;
}

/** A reader that is ready. Its own worker takes some 100 MB until the reader is closed. */
export interface PictureReader {
  /**
   * Returns the words of a picture with their boxes, in reading order. Reads one picture at a time. Rejects with
   * `PictureFault` or the reason of the signal. Stopping a reader closes it.
   */
  read(picture: Picture, options?: ReadOptions): Promise<PictureReading>;
  /** Ends the worker and frees its memory at once. */
  close(): void;
}

/**
 * Starts the OCR reader on this machine, in a worker of the calling page. All its files are in the package. Rejects
 * with `PictureFault` if the reader cannot start, or with the reason of the signal. Aborting the signal closes the
 * reader at any time.
 */
export async function openPictureReader({ signal, onProgress }: ReadOptions = {}): Promise<PictureReader> {
  signal?.throwIfAborted();
  let tell: ReadOptions['onProgress'];
  let fail: (error: unknown) => void = () => undefined;
  const starting = createWorker('eng', OEM.LSTM_ONLY, {
    workerPath: `${READER_FOLDER}/worker.min.js`,
    corePath: `${READER_FOLDER}/tesseract-core-simd-lstm.js`,
    langPath: READER_FOLDER,
    workerBlobURL: false,
    // The file is in the package already. A copy in a database would only waste space.
    cacheMethod: 'none',
    logger: ({ status, progress }) => {
      if (status === 'recognizing text') tell?.({ stage: 'reading', share: progress });
    },
    errorHandler: (error) => fail(error),
  });
  let worker: Worker | null = null;
  let isClosed = false;
  const close = (): void => {
    isClosed = true;
    void worker?.terminate();
    worker = null;
  };
  // A reader that is closed while it starts is ended as soon as it has started.
  starting.then(
    (started) => {
      if (isClosed) void started.terminate();
    },
    () => undefined,
  );
  onProgress?.({ stage: 'loading', share: 0 });
  const failed = new Promise<never>((_, reject) => {
    fail = (error) => reject(new PictureFault('noReader', error));
  });
  failed.catch(() => undefined);
  try {
    worker = await untilStopped(Promise.race([starting, failed]), signal, close);
  } catch (error) {
    close();
    throw signal?.aborted || error instanceof PictureFault ? error : new PictureFault('noReader', error);
  }
  onProgress?.({ stage: 'loading', share: 1 });
  signal?.addEventListener('abort', close, { once: true });

  return {
    close,
    async read(picture, options = {}) {
      options.signal?.throwIfAborted();
      signal?.throwIfAborted();
      const prepared = await preparePicture(picture);
      if (!worker) throw new PictureFault('noReader');
      tell = options.onProgress;
      tell?.({ stage: 'reading', share: 0 });
      const job = worker.recognize(
        prepared.image as unknown as Blob,
        { tessedit_pageseg_mode: PSM.AUTO, ...prepared.settings } as object,
        { text: false, blocks: true },
      );
      const stop = AbortSignal.any([options.signal, signal].filter((one) => one !== undefined));
      try {
        const { data } = await untilStopped(job, stop, close);
        return findLines((data.blocks ?? []) as unknown as ReadBlock[], prepared);
      } catch (error) {
        if (stop.aborted) throw stop.reason;
        throw new PictureFault('notRead', error);
      } finally {
        tell = undefined;
      }
    },
  };
}

/** Reads one picture and closes the reader. Rejects with the same errors as the reader. */
export async function readPicture(picture: Picture, options: ReadOptions = {}): Promise<PictureReading> {
  const reader = await openPictureReader(options);
  try {
    return await reader.read(picture, options);
  } finally {
    reader.close();
  }
}

/**
 * Returns the result of a job. The job is given up at once when the signal is aborted. A worker that is computing
 * receives no messages, so it can only be ended.
 */
async function untilStopped<T>(
  job: Promise<T>,
  signal: AbortSignal | undefined,
  end: () => void,
): Promise<T> {
  if (!signal) return job;
  let stop = (): void => undefined;
  const stopped = new Promise<never>((_, reject) => {
    stop = () => {
      end();
      reject(signal.reason);
    };
    if (signal.aborted) stop();
    else signal.addEventListener('abort', stop, { once: true });
  });
  job.catch(() => undefined);
  try {
    return await Promise.race([job, stopped]);
  } finally {
    signal.removeEventListener('abort', stop);
  }
}
