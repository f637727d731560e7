import { render } from 'preact';
import { PdfPage } from '../../src/pages/pdf/pdf-page.tsx';
import { startPage } from '../../src/ui/start-page.ts';
import { say } from '../../src/wording/say.ts';

startPage(say('pdf.title'));
render(<PdfPage />, document.getElementById('pdf')!);
