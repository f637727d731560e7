import { defineContentScript } from 'wxt/utils/define-content-script';
import { hostPage } from '../src/host/page-host.ts';
import { startPage } from '../src/page/start-page.ts';

export default defineContentScript({
  registration: 'runtime',
  matches: [],
  main: () => hostPage((options) => startPage(document, options)),
});
