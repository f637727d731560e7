import { english } from '../wording/en.ts';
import { listMessages } from '../wording/list-messages.ts';
import { sayFrom } from '../wording/say.ts';

// The commands speak English, and so does what they share with the extension: no browser is there to look texts up.
sayFrom(listMessages('en', english));
