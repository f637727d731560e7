import { render } from 'preact';
import { PicturePage } from '../../src/pages/picture/picture-page.tsx';
import { startPage } from '../../src/ui/start-page.ts';
import { say } from '../../src/wording/say.ts';

startPage(say('picture.title'));
render(<PicturePage />, document.getElementById('picture')!);
