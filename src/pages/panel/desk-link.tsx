import { say } from '../../wording/say.ts';

/** Leads to the desk, where any text can be pasted or opened; with the text of a shaded tab, if one is given. */
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
