import { render } from 'preact';
import { PrivacyPage } from '../../src/pages/privacy/privacy-page.tsx';
import { startPage } from '../../src/ui/start-page.ts';
import { say } from '../../src/wording/say.ts';

startPage(say('privacy.title'));
render(<PrivacyPage />, document.getElementById('privacy')!);
