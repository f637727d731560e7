import * as v from 'valibot';
import type { Passage, PassageSource, PassageVersion } from '../../passage/kept/passage.ts';
import { countSchema, recordOf, textOrNull } from './schema.ts';

const lineOfSource = v.fallback(textOrNull, null);

/** A source that is not an object becomes an empty source. A line of another kind, or a missing line, becomes null. */
const source: v.GenericSchema<unknown, PassageSource> = v.fallback(
  v.object({ url: lineOfSource, byline: lineOfSource, date: lineOfSource }),
  { url: null, byline: null, date: null },
);

const version: v.GenericSchema<unknown, PassageVersion> = v.object({
  text: v.string(),
  storyWords: v.array(v.object({ word: v.string(), meaning: v.string() })),
});

const content = { title: v.string(), source, original: v.string(), versions: recordOf(version) };

/** A passage in a file of passages, where passages have no ids of their own. */
export const passageContentSchema: v.GenericSchema<unknown, Omit<Passage, 'id' | 'rev' | 'saved'>> = v.object(
  content,
);

/** A passage as it is stored. */
export const passageSchema: v.GenericSchema<unknown, Passage> = v.object({
  id: v.pipe(v.string(), v.nonEmpty()),
  ...content,
  rev: countSchema,
  saved: countSchema,
});
