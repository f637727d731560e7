import { placeClasses } from './place-classes.ts';
import { thingClasses } from './thing-classes.ts';

/**
 * Words that may be in the same place of the same sentence, by what can be done with the things they name.
 */
export const wordClasses: Readonly<Record<string, string>> = { ...placeClasses, ...thingClasses };
