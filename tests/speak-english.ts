import { english } from '../src/wording/en.ts';
import { listMessages } from '../src/wording/list-messages.ts';
import { sayFrom } from '../src/wording/say.ts';

// No browser is there to look texts up.
sayFrom(listMessages('en', english));
