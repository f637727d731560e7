import { GroupError } from './group-error.ts';
import { nearestName } from './nearest-name.ts';

/**
 * The error for a name nothing is called by, with the nearest right one: `alsoTaught[1]: there is no pattern
 * "shorta". Did you mean "short-a"?`. `kind` is what it should name: pattern, sequence, key.
 */
export function unknownName(path: string, kind: string, typed: string, known: Iterable<string>): GroupError {
  const nearest = nearestName(typed, known);
  const hint = nearest === null ? '' : ` Did you mean "${nearest}"?`;
  return new GroupError(path, `there is no ${kind} "${shorten(typed)}".${hint}`);
}

/** Text from a file as an error may quote it: at most 60 characters. */
export function shorten(text: string): string {
  return text.length > 60 ? `${text.slice(0, 60)}…` : text;
}
