import { render } from 'preact';
import { WelcomePage } from '../../src/pages/welcome/welcome-page.tsx';
import { startPage } from '../../src/ui/start-page.ts';
import { say } from '../../src/wording/say.ts';

startPage(say('welcome.title'));
render(<WelcomePage />, document.getElementById('welcome')!);
