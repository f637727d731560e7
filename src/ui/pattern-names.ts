import type { PatternId } from '../analyze/types.ts';
import { patternName } from './pattern-name.ts';

/** The names of patterns in the reader's language: `ai as in rain; suffix -ing`. */
export function patternNames(ids: readonly PatternId[]): string {
  return ids.map(patternName).join('; ');
}
