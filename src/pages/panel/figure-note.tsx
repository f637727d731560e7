import type { PageWords, UnreadFrame } from '../../contract/page-contract.ts';
import { say, sayWith, spokenLanguage } from '../../wording/say.ts';
import type { LimitName } from './figure-limits.ts';

/** The line above the figure. It says what the figure covers and what to do about the rest. */
export function FigureNote({ limit, page }: { limit: LimitName; page: PageWords }) {
  return (
    <p class="quiet" role="status">
      {limit === 'otherLanguage' ? (
        say('panel.otherLanguage', { language: nameLanguage(page.language) })
      ) : limit === 'frame' || limit === 'fullFrame' ? (
        <FrameNote frames={page.foreign} isFull={limit === 'fullFrame'} />
      ) : limit === 'silentFrames' ? (
        say('panel.silentFrames', { count: page.silentFrames })
      ) : (
        say(`panel.${limit}`)
      )}
    </p>
  );
}

const WHYS = { pdf: 'panel.framePdf', sealed: 'panel.frameSealed', site: 'panel.foreign' } as const;

/**
 * Shows one reason why frames are not read, with links to all frames for which the reason holds. Only a frame with a
 * web address can be opened.
 */
function FrameNote({ frames, isFull }: { frames: readonly UnreadFrame[]; isFull: boolean }) {
  const { why } = frames.find(({ fills }) => fills || !isFull)!;
  const links = frames
    .filter((frame) => frame.why === why)
    .map(({ url, title }, i) => (
      <>
        {i > 0 && ', '}
        <a key={url} href={/^https?:/.test(url) ? url : undefined} target="_blank" rel="noopener">
          {title || say('panel.frame')}
        </a>
      </>
    ));
  return <>{sayWith(WHYS[why], { frames: links })}</>;
}

/** Returns the name of a language in the reader’s language, or its code if the browser does not know the code. */
function nameLanguage(code: string): string {
  try {
    return new Intl.DisplayNames(spokenLanguage(), { type: 'language' }).of(code) ?? code;
  } catch {
    return code;
  }
}
