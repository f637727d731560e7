import countsAs from '../../ui/counts-as.css?inline';
import markLegend from '../../ui/mark-legend.css?inline';
import readingView from '../../ui/reading-view.css?inline';
import tokens from '../../ui/tokens.css?inline';
import card from './card.css?inline';

/**
 * The plain card's rules for its shadow root. The shared sheets have rules for a whole page; these rules are changed to
 * apply to the card. The rem unit would be the letter size of the web page, so it is replaced by the reader's own size
 * (`--rem`, set where the card is shown).
 */
export const cardStyle = [tokens, readingView, countsAs, markLegend, card]
  .join('\n')
  .replace(/:root\b|\bbody\b/g, '.sheet')
  .replace(/(-?[\d.]+)rem\b/g, 'calc($1 * var(--rem, 16px))');
