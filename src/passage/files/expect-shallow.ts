import { say } from '../../wording/say.ts';
import { FileFault } from './file-fault.ts';

/** No page anybody wrote has elements so deep in each other; browsers cut off at some 500 themselves. */
const DEEPEST = 1000;

/** Elements that end where their author says so; those that may be left open (p, li, td) would make a long page look deep. */
const CLOSED =
  'a abbr address article aside b big blockquote center cite code details div dl em fieldset figure font footer form header i main nav ol q s section small span strong sub sup svg table u ul'.split(
    ' ',
  );
const TAGS = new RegExp(`<(/?)(?:${CLOSED.join('|')})(?=[\\s/>])`, 'gi');

/** Lets a page through whose elements are no deeper in each other than a page's are. Throws `FileFault`. */
export function expectShallow(html: string): void {
  let depth = 0;
  for (const [, closes] of html.replace(/<!--.*?-->|<script\b.*?<\/script>/gis, '').matchAll(TAGS)) {
    depth = closes ? Math.max(0, depth - 1) : depth + 1;
    if (depth > DEEPEST) throw new FileFault(say('files.tooDeep'));
  }
}
