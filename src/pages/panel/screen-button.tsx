import { useState } from 'preact/hooks';
import { askBackground } from '../../host/page-talk/client.ts';
import { say } from '../../wording/say.ts';

/** Has what a page draws read as a picture, again after each scrolling: a page of our own has the text, and gets the new lines. */
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
