import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import { offerPart } from '../src/host/page-talk/page-host.ts';
import { openPlainCard } from '../src/overlay/card/open-plain-card.tsx';
import type { PageParts } from '../src/overlay/page/page-parts.ts';

export default defineUnlistedScript(() => offerPart<PageParts>({ 'plain-card': openPlainCard }));
