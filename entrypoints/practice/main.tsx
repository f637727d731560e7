import { render } from 'preact';
import { PracticePage } from '../../src/pages/practice/practice-page.tsx';
import { startPage } from '../../src/ui/start-page.ts';
import { say } from '../../src/wording/say.ts';

startPage(say('welcome.practiceTitle'));
render(<PracticePage />, document.getElementById('practice')!);
