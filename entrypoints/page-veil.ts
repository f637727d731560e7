import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import { offerPart } from '../src/host/page-talk/page-host.ts';
import { openVeil } from '../src/overlay/draw-veil.ts';
import type { PageParts } from '../src/overlay/page/page-parts.ts';

export default defineUnlistedScript(() => offerPart<PageParts>({ veil: openVeil }));
