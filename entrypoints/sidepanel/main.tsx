import { render } from 'preact';
import { Panel } from '../../src/panel/panel.tsx';

render(<Panel />, document.getElementById('panel')!);
