import { render } from 'preact';
import { HelpPage } from '../../src/pages/help/help-page.tsx';
import { startPage } from '../../src/ui/start-page.ts';
import { say } from '../../src/wording/say.ts';

startPage(say('help.title'));
render(<HelpPage />, document.getElementById('help')!);
