import { readTable } from './engine-data.ts';

// Imported before all else by the background, which the browser starts anew for a question: the table is on its way while the rest of the
// code is still being evaluated, a third of the time to the answer. Nothing is there to be read while the package is built.
if (globalThis.chrome?.runtime?.id) readTable().catch(() => undefined);
