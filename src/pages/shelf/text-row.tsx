import type { Fit } from '../../analyze/index.ts';
import { sayDay } from '../../ui/say-day.ts';
import { say } from '../../wording/say.ts';
import { describeFit, sayReach, sayWords } from './describe-fit.ts';
import type { IndexedText } from './shelf-index.ts';
import { addressOf } from './use-route.ts';

interface TextRowProps {
  readonly text: IndexedText;
  readonly fit: Fit;
  /** The group's step. */
  readonly step: number;
  /** Whether the row is under a heading that says that the text is ready now. */
  readonly isUnderNow: boolean;
  /** Whether the row shows the day the text was saved. */
  readonly isDated: boolean;
}

/** Shows one text of the list: its readable share, when it is ready, and its length. */
export function TextRow({ text, fit, step, isUnderNow, isDated }: TextRowProps) {
  const about = [
    !isUnderNow && describeFit(fit, step),
    sayWords(fit.running),
    fit.opened > 0 && step > 0 && say('shelf.openedByStep', { count: fit.opened }),
    siteOf(text.url),
    isDated && say('shelf.shelved', { day: sayDay(text.shelved, 'medium') }),
  ].filter((part) => part !== false && part !== null);
  return (
    <li class={fit.now ? 'shelf-row shelf-row-now' : 'shelf-row'}>
      <p class="shelf-reach">{sayReach(fit.reach)}</p>
      <div class="shelf-about">
        <a class="shelf-title" lang="en" href={addressOf({ view: 'text', id: text.id })}>
          {text.title || say('shelf.untitled')}
        </a>
        {text.tags.length > 0 && (
          <ul class="shelf-tags" aria-label={say('shelf.tags')}>
            {text.tags.map((tag) => (
              <li key={tag} class="shelf-tag">
                {tag}
              </li>
            ))}
          </ul>
        )}
        <p class="quiet">{about.join(' · ')}</p>
      </div>
    </li>
  );
}

/** Returns the host of a text from the web, or null for a text from a file. */
function siteOf(url: string | null): string | null {
  return url !== null && URL.canParse(url) ? new URL(url).host || null : null;
}
