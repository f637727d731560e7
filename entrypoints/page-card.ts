import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import { openCard } from '../src/card/open-card.tsx';
import { offerPart } from '../src/host/page-host.ts';
import type { PageParts } from '../src/page/page-parts.ts';

export default defineUnlistedScript(() => offerPart<PageParts>({ card: openCard }));
