import { render } from 'preact';
import { GroupsPage } from '../../src/groups/groups-page.tsx';

render(<GroupsPage />, document.getElementById('groups')!);
