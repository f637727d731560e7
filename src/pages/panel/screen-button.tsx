import { useState } from 'preact/hooks';
import { askBackground } from '../../host/page-talk/client.ts';
import { say } from '../../wording/say.ts';

/**
 * Reads text that a page draws, from a picture of the page. The button can be pressed again after each scroll. The text
 * goes to a page of Wordreach, which also receives the new lines.
 */
export function ScreenButton({ tab }: { tab: number }) {
  const [isWorking, setIsWorking] = useState(false);
  const [told, setTold] = useState('');
  const read = async (): Promise<void> => {
    setIsWorking(true);
    const taking = await askBackground('takeScreen', tab).catch((error: Error) => ({ why: error.message }));
    setIsWorking(false);
    setTold(
      'why' in taking ? taking.why : say(taking.done === 'added' ? 'panel.screenAdded' : 'panel.scrollOn'),
    );
  };
  return (
    <>
      <button type="button" class="action" disabled={isWorking} onClick={() => void read()}>
        {say('panel.readScreen')}
      </button>
      <span class="quiet" role="status">
        {told}
      </span>
    </>
  );
}
