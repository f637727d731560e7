import { startFirefox } from './e2e/browser.ts';
import { makePdf } from './desk/make-files.ts';
const browser = await startFirefox();
try {
  for (const name of ['night.pdf', 'night']) {
    const url = browser.serve(name, await makePdf());
    const page = await browser.context.newPage();
    await page.goto(url).catch((e: unknown) => console.log('goto', String(e).slice(0, 200)));
    console.log('shown', page.url());
    await browser.press(page).catch((e: unknown) => console.log('press', String(e).slice(0, 200)));
    await new Promise((r) => setTimeout(r, 1500));
    const said = await browser.inBackground(async () => {
      const [tab] = await chrome.tabs.query({ active: true, currentWindow: true });
      const out: Record<string, unknown> = { url: tab?.url, title: tab?.title };
      try {
        out.injected = JSON.stringify(
          await chrome.scripting.executeScript({
            target: { tabId: tab!.id! },
            func: () => [document.contentType, location.href],
          }),
        );
      } catch (error) {
        out.refused = String(error);
      }
      try {
        const answer = await fetch(tab!.url!);
        out.fetched = answer.status;
      } catch (error) {
        out.fetchRefused = String(error);
      }
      return out;
    });
    console.log(name, JSON.stringify(said));
    const panel = await browser.openPanel(page).catch((e: unknown) => {
      console.log('panel', String(e).slice(0, 200));
      return null;
    });
    if (panel) {
      await new Promise((r) => setTimeout(r, 1500));
      console.log('panel says', (await panel.locator('main').innerText()).replace(/\n+/g, ' | '));
    }
  }
} finally {
  await browser.close();
}
