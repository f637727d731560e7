import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import { openCardLine } from '../src/host/page-talk/card-line.ts';
import { offerPart } from '../src/host/page-talk/page-host.ts';
import { createFramedCard } from '../src/overlay/card/open-framed-card.ts';
import { startCards } from '../src/overlay/card/start-cards.ts';
import type { PageParts } from '../src/overlay/page/page-parts.ts';

export default defineUnlistedScript(() => {
  const openCard = createFramedCard({ openLine: openCardLine });
  offerPart<PageParts>({
    card: (doc, sources, options) => startCards(doc, sources, { ...options, openCard }),
  });
});
