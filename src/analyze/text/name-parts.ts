import parts from './name-parts.json' with { type: 'json' };
import { wordSet } from './word-set.ts';

/**
 * Days and months, which end a name before them (the Tarn Music Hall October 10). May is left out, because it is also a
 * name.
 */
export const DATES: ReadonlySet<string> = wordSet(parts.dates);

/**
 * Words before somebody's name that are no part of the name: Captain Falk, Uncle Bram. Days and months are included.
 * All are in lower case.
 */
export const FORMS_OF_ADDRESS: ReadonlySet<string> = wordSet(`${parts.formsOfAddress} ${parts.dates}`);

/**
 * Forms of address that are surnames after a first name (Wilma King), and one that is no form of address alone (the
 * Tarn Prime).
 */
export const SURNAMES: ReadonlySet<string> = wordSet(parts.surnames);

/** Offices, which are no names with their field: Head of Modern Boats, Secretary of State; not the King of the Tarn Isles. */
export const ROLES: ReadonlySet<string> = wordSet(parts.roles);

/**
 * The last words in the names of places and houses. Such names begin with any word: Maple Street, King Street, Justice
 * Department.
 */
export const PLACES: ReadonlySet<string> = wordSet(parts.places);

/** Words before a day that make the day a feast: Ash Wednesday, Black Friday. */
export const BEFORE_FEASTS: ReadonlySet<string> = wordSet(parts.beforeFeasts);

/** Words that end a feast's name after an owner's s: Mother's Day. */
export const FEASTS: ReadonlySet<string> = wordSet(parts.feasts);

/**
 * Words with a capital that do not belong to a name after them: Both Boats. The capital after such a word is judged by
 * itself.
 */
export const NO_OPENERS: ReadonlySet<string> = wordSet(parts.noOpeners);

/** Things that texts number without naming them: Step 2, Figure 3; not Pier 9. */
export const LABELS: ReadonlySet<string> = wordSet(parts.labels);
