import { readTable } from './engine-data.ts';

// The background imports this file before all others. The browser starts the background anew for a question. The table
// is loaded while the rest of the code is still being evaluated, which takes a third of the time to the answer. While
// the package is built, there is nothing to load.
if (globalThis.chrome?.runtime?.id) readTable().catch(() => undefined);
