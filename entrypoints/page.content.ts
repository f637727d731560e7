import { defineContentScript } from 'wxt/utils/define-content-script';
import { hostPage } from '../src/host/page-host.ts';
import { startOverlay } from '../src/overlay/start-overlay.ts';

export default defineContentScript({
  registration: 'runtime',
  matches: [],
  main: () => hostPage((options) => startOverlay(document, options)),
});
