import { say } from '../../wording/say.ts';

/**
 * Links to the desk, where any text can be pasted or opened. With `tab`, the desk opens with the text of that shaded
 * tab.
 */
export function DeskLink({ tab }: { tab?: number }) {
  return (
    <a
      class="tool"
      href={tab === undefined ? '/desk.html' : `/desk.html#take/${tab}`}
      target="_blank"
      rel="noopener"
    >
      {tab === undefined ? say('panel.openDesk') : say('panel.takeToDesk')}
    </a>
  );
}
