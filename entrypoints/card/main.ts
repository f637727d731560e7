import { joinCardLine } from '../../src/host/page-talk/card-line.ts';
import { serveCard } from '../../src/pages/card/serve-card.tsx';
import { watchCover } from '../../src/pages/card/watch-cover.ts';
import '../../src/ui/tokens.css';
import '../../src/ui/reading-view.css';
import '../../src/ui/counts-as.css';
import '../../src/ui/mark-legend.css';
import '../../src/overlay/card/card.css';
import '../../src/pages/card/card-page.css';

void joinCardLine().then((line) => serveCard(document, line, watchCover));
