import { render } from 'preact';
import { GroupsPage } from '../../src/pages/groups/groups-page.tsx';
import { startPage } from '../../src/ui/start-page.ts';
import { say } from '../../src/wording/say.ts';

startPage(say('groups.title'));
render(<GroupsPage />, document.getElementById('groups')!);
