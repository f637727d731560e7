import { render } from 'preact';
import { ReportPage } from '../../src/pages/report/report-page.tsx';
import { startPage } from '../../src/ui/start-page.ts';
import { say } from '../../src/wording/say.ts';

startPage(say('report.title'));
render(<ReportPage />, document.getElementById('report')!);
