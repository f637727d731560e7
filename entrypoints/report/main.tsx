import { render } from 'preact';
import { ReportPage } from '../../src/report/report-page.tsx';

render(<ReportPage />, document.getElementById('report')!);
