export { choiceKey } from './choice-key.ts';
export { importSequence } from './import-sequence.ts';
export type {
  ImportedItem,
  ImportedSequence,
  ImportedStep,
  ItemChoice,
  ItemStatus,
} from './imported-sequence.ts';
export { toSequence } from './to-sequence.ts';
