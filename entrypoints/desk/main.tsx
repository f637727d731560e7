import { render } from 'preact';
import { DeskPage } from '../../src/pages/desk/desk-page.tsx';
import { startPage } from '../../src/ui/start-page.ts';
import { say } from '../../src/wording/say.ts';

startPage(say('desk.title'));
render(<DeskPage />, document.getElementById('desk')!);
