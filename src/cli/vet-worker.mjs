// A thread starts without the means to read TypeScript that its process has.
import { register } from 'tsx/esm/api';

register();
await import('./vet-worker.ts');
