import { defineUnlistedScript } from 'wxt/utils/define-unlisted-script';
import { offerPart } from '../src/host/page-talk/page-host.ts';
import { findArticle } from '../src/overlay/find-article.ts';
import type { PageParts } from '../src/overlay/page/page-parts.ts';

export default defineUnlistedScript(() => offerPart<PageParts>({ article: findArticle }));
