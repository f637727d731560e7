import { render } from 'preact';
import { ShelfPage } from '../../src/pages/shelf/shelf-page.tsx';
import { startPage } from '../../src/ui/start-page.ts';
import { say } from '../../src/wording/say.ts';

startPage(say('ui.shelfPage'));
render(<ShelfPage />, document.getElementById('shelf')!);
