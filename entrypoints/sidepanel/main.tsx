import { render } from 'preact';
import { Panel } from '../../src/pages/panel/panel.tsx';
import { startPage } from '../../src/ui/start-page.ts';

startPage('Wordreach');
render(<Panel />, document.getElementById('panel')!);
