import { findChromium } from '../src/tools/find-browser.ts';
import { launchExtension } from '../src/tools/launch-extension.ts';
import { longestTask, openSideWorld } from '../tests/e2e/main-thread.ts';
import { longText } from './long-text.ts';

/** In milliseconds. */
export interface PlanFigures {
  /** Time from the press of the button until the plan is shown, for a plan asked for the second time. */
  readonly shown: number;
  /**
   * The longest task of the page meanwhile, in processor time: for the first plan, which opens the tables, and for the
   * second plan.
   */
  readonly first: number;
  readonly longest: number;
}

/** Asks twice for a plan of a passage of 1,000 words on the desk, in a real Chromium. */
export async function measureDeskPlan(): Promise<PlanFigures> {
  const browser = await launchExtension({ executable: findChromium(), headless: true, sealed: true });
  const desk = await browser.context.newPage();
  await desk.goto(`chrome-extension://${browser.id}/desk.html`);
  await desk.getByLabel('Text', { exact: true }).fill(longText(1000));
  await desk.getByRole('button', { name: 'Make a passage' }).click();
  await desk.waitForSelector('.reach-figure');
  await desk.getByText('Plan changes').click();
  await desk.getByLabel('Sentences of at most').selectOption('10 words');
  const side = await openSideWorld(desk);
  const rest = () => side.evaluate(() => new Promise((rested) => requestIdleCallback(rested)));
  let shown = 0;
  const plan = async (): Promise<void> => {
    const began = performance.now();
    await desk.getByRole('button', { name: 'Propose changes' }).click();
    await desk.waitForSelector('#plan-distance', { timeout: 120_000 });
    shown = performance.now() - began;
    await rest();
  };
  for (let n = 0; n < 3; n++) await rest();
  const first = await longestTask(desk, side, plan);
  await desk.getByRole('button', { name: 'Close without changes' }).first().click();
  await desk.getByText('Plan changes').waitFor();
  await rest();
  const longest = await longestTask(desk, side, plan);
  await browser.close();
  return { shown, first, longest };
}
