import { render } from 'preact';
import { DeskPage } from '../../src/desk/desk-page.tsx';

render(<DeskPage />, document.getElementById('desk')!);
