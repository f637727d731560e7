import parts from './name-parts.json' with { type: 'json' };
import { wordSet } from './word-set.ts';

/** Days and months end a name before them (the Tarn Music Hall October 10); not May, which is a name too. */
export const DATES: ReadonlySet<string> = wordSet(parts.dates);

/** Before somebody's name, and no part of it: Captain Falk, Uncle Bram, days and months too; small letters. */
export const FORMS_OF_ADDRESS: ReadonlySet<string> = wordSet(`${parts.formsOfAddress} ${parts.dates}`);

/** Forms of address that are surnames too, behind a first name (Wilma King), and one that is none alone (the Tarn Prime). */
export const SURNAMES: ReadonlySet<string> = wordSet(parts.surnames);

/** Offices, which are no names with their field: Head of Modern Boats, Secretary of State; not the King of the Tarn Isles. */
export const ROLES: ReadonlySet<string> = wordSet(parts.roles);

/** The last words of places and houses, whose names begin with any word: Maple Street, King Street, Justice Department. */
export const PLACES: ReadonlySet<string> = wordSet(parts.places);

/** Before a day that is a feast then: Ash Wednesday, Black Friday. */
export const BEFORE_FEASTS: ReadonlySet<string> = wordSet(parts.beforeFeasts);

/** Behind an owner's s they end a feast's name: Mother's Day. */
export const FEASTS: ReadonlySet<string> = wordSet(parts.feasts);

/** Before a capital they do not begin its name: Both Boats; so the capital is judged by itself. */
export const NO_OPENERS: ReadonlySet<string> = wordSet(parts.noOpeners);

/** Things that texts number without naming them: Step 2, Figure 3; not Pier 9. */
export const LABELS: ReadonlySet<string> = wordSet(parts.labels);
