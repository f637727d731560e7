export { choiceKey } from './choice-key.ts';
export type { CellKind } from './column-kinds.ts';
export { importSequence, readColumns } from './import-sequence.ts';
export type {
  ImportedItem,
  ImportedSequence,
  ImportedStep,
  ItemChoice,
  ItemStatus,
  PastedTable,
} from './imported-sequence.ts';
export { toSequence } from './to-sequence.ts';
