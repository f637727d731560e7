import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import { offerPart } from '../src/host/page-talk/page-host.ts';
import { openCard } from '../src/overlay/card/open-card.tsx';
import type { PageParts } from '../src/overlay/page/page-parts.ts';

export default defineUnlistedScript(() => offerPart<PageParts>({ card: openCard }));
