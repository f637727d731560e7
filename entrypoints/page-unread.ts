import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import { offerPart } from '../src/host/page-talk/page-host.ts';
import type { PageParts } from '../src/overlay/page/page-parts.ts';
import { watchUnreadText } from '../src/overlay/watch-unread-text.ts';

export default defineUnlistedScript(() => offerPart<PageParts>({ unread: watchUnreadText }));
