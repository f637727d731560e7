import type { OpenTab } from '../../host/page-talk/open-tabs.ts';

/** The open tabs that match pasted addresses, and the addresses without a tab. */
export interface MatchedAddresses {
  readonly matched: readonly OpenTab[];
  readonly missing: readonly string[];
}

/**
 * Finds the tabs of pasted addresses, which are separated by white space or commas. Three differences are ignored: the
 * fragment, a slash at the end, and http or https. For example, https://tarnquay.example/ferry#top matches
 * http://tarnquay.example/ferry/, but not the page /ferry?day=2.
 */
export function matchAddresses(pasted: string, tabs: readonly OpenTab[]): MatchedAddresses {
  const wanted = [...new Set(pasted.split(/[\s,]+/).filter((address) => address !== ''))];
  const found = wanted.map((address) => ({
    address,
    tab: tabs.find(({ url }) => plain(url) === plain(address)),
  }));
  return {
    matched: [...new Set(found.flatMap(({ tab }) => (tab ? [tab] : [])))],
    missing: found.filter(({ tab }) => !tab).map(({ address }) => address),
  };
}

function plain(address: string): string {
  const whole = /^[a-z][a-z+.-]*:/i.test(address) ? address : `https://${address}`;
  if (!URL.canParse(whole)) return address;
  const { host, pathname, search } = new URL(whole);
  return `${host}${pathname.replace(/\/$/, '')}${search}`;
}
