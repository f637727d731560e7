import { render } from 'preact';
import { startPage } from '../../src/ui/start-page.ts';
import { WelcomePage } from '../../src/welcome/welcome-page.tsx';
import { say } from '../../src/wording/say.ts';

startPage(say('welcome.title'));
render(<WelcomePage />, document.getElementById('welcome')!);
