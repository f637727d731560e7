import { readFileSync } from 'node:fs';
import { h } from 'preact';
import { beforeEach, expect, test, vi } from 'vitest';
import { compileGroup, createJudge, parseGroup, parseSequence } from '../../src/analyze/index.ts';
import { loadEngine } from '../../src/host/data/load-engine.ts';
import { PlanReview } from '../../src/pages/desk/plan/plan-review.tsx';
import { PlanView } from '../../src/pages/desk/plan/plan-view.tsx';
import { usePlan } from '../../src/pages/desk/plan/use-plan.ts';
import { createShader } from '../../src/passage/shade-line.ts';
import { openPage } from './mount-page.ts';
import { screen } from './screen.ts';

const sequence = parseSequence(JSON.parse(readFileSync('profiles/sequences/steady-steps.json', 'utf8')));
const group = parseGroup({ name: 'Herons', sequence: 'steady-steps', step: 20 });
const judge = createJudge(await loadEngine(), compileGroup(group, sequence));
const text = 'The ship was late.\nUnfortunately, Bram purchased a lamp. It was a big lamp.';
const judging = { judge, shade: createShader(judge)(text) };
const onMake = vi.fn();
const onRewrite = vi.fn();
const none: readonly string[] = [];

/** The plan without the rest of the desk. */
function Plan() {
  const planner = usePlan(text, judging, none, onMake);
  const { proposal } = planner.plan;
  return h('div', {}, [
    h(PlanView, { planner, text }),
    planner.isOpen && proposal
      ? h(PlanReview, {
          planner,
          proposal,
          judging,
          storyWords: none,
          findStep: () => 41,
          report: '/report.html#passage/1/herons',
          onRewrite,
        })
      : null,
  ]);
}

beforeEach(() => {
  onMake.mockReset();
  onRewrite.mockReset();
});

async function open(target = 'every word', most = '3 words'): Promise<void> {
  await openPage(Plan);
  await screen.getByText('Plan changes').click();
  await screen.getByLabel('Readable at least').selectOption(target);
  await screen.getByLabel('Pre-teach at most').selectOption(most);
  await screen.getByRole('button', { name: 'Propose changes' }).click();
  await screen.getByText('Close without changes').waitFor();
}
const result = async () => (await screen.getByRole('region', { name: 'After' }).textContent()) ?? '';

test('a plan says how far the text is from the group, ticks safe changes, and shows the changed text', async () => {
  await open();
  expect(await screen.getByRole('heading', { level: 3 }).textContent()).toMatch(/^(?:Near|Some way|Too far)/);
  expect(await result()).toContain('Bram got a lamp');
  expect(await result()).not.toContain('Unfortunately');
});

test('a refused change is not made, and the figures change accordingly', async () => {
  await open();
  const figures = async () => (await screen.locator('.plan-figures').textContent()) ?? '';
  const before = await figures();
  await screen.getByLabel('Shorten: without “Unfortunately”.').click();
  expect(await result()).toContain('Unfortunately');
  expect(await figures()).not.toBe(before);
  await screen.getByRole('button', { name: 'Make ticked changes' }).click();
  const [[edits]] = onMake.mock.calls as [[{ text: string }[]]];
  expect(edits.map(({ text }) => text)).toEqual(['got']);
});

test('for a text that is too far, a plan offers to read it aloud, take it at its step, or rewrite it', async () => {
  await open('every word', '0 words');
  const heading = await screen.getByRole('heading', { level: 3 }).textContent();
  expect(heading).toMatch(/^Too far for this group: at most \d of 3 sentences/);
  expect(await screen.getByText('Take it at step 41').textContent()).toBeTruthy();
  await screen.getByRole('button', { name: 'Rewrite it' }).click();
  expect(onRewrite).toHaveBeenCalledOnce();
  expect(onMake).not.toHaveBeenCalled();
});
