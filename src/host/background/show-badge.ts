import { browser } from '../browser.ts';

/** The text and background colours of the badge, the same on every toolbar. Their contrast is 6.9:1. */
const COLOURS = { back: '#17655a', text: '#ffffff' };

/** Writes the reach on the toolbar button of a tab, in whole percent. Null removes it. */
export async function showBadge(tab: number, reach: number | null): Promise<void> {
  const button = browser.action ?? browser.browserAction;
  // The reach is rounded down, so that 100 means every word.
  await button.setBadgeText({ tabId: tab, text: reach === null ? '' : `${Math.floor(reach)}%` });
  if (reach === null) return;
  await button.setBadgeBackgroundColor({ tabId: tab, color: COLOURS.back });
  await (button as Partial<typeof button>).setBadgeTextColor?.({ tabId: tab, color: COLOURS.text });
}
