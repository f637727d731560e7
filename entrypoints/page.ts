import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import { hostPage } from '../src/host/page-talk/page-host.ts';
import type { PageParts } from '../src/overlay/page/page-parts.ts';
import { startPage } from '../src/overlay/page/start-page.ts';

export default defineUnlistedScript(() => hostPage<PageParts>((options) => startPage(document, options)));
