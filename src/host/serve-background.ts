import { compileGroup, createJudge, type Judge, vet } from '../analyze/index.ts';
import type { Group } from '../analyze/types.ts';
import { browser, openPanel } from './browser.ts';
import { chosenGroup, loadGroups, watchGroups } from './groups-store.ts';
import { loadEngine } from './load-engine.ts';
import { type Answers, answer, isQuestion, type ToBackground } from './messages.ts';
import { shadePage } from './page-access.ts';
import { findSequence } from './sequences.ts';

/**
 * Answers panel and pages, and starts shading at a click on the toolbar button. Whatever it needs is read anew
 * after the browser has stopped it; nothing is kept but for speed.
 */
export function serveBackground(): void {
  let judge: Promise<Judge> | undefined;
  watchGroups(() => {
    judge = undefined;
  }, new AbortController().signal);

  function loadJudge(): Promise<Judge> {
    judge ??= Promise.all([loadEngine(), loadGroups()]).then(([engine, groups]) =>
      createJudge(engine, compile(chosenGroup(groups))),
    );
    judge.catch(() => {
      judge = undefined;
    });
    return judge;
  }

  const answers: Answers<ToBackground> = {
    judge: async (keys) => {
      const verdictOf = await loadJudge();
      return keys.map((key) => verdictOf(key).standing);
    },
    report: async (page) => vet(page, await loadJudge()),
    explain: async (key) => {
      const [engine, verdictOf] = await Promise.all([loadEngine(), loadJudge()]);
      return { analysis: engine.analyze(key), verdict: verdictOf(key) };
    },
  };
  browser.runtime.onMessage.addListener((message: unknown) =>
    isQuestion(message, 'background') ? answer(answers, message) : undefined,
  );

  const button = browser.action ?? browser.browserAction;
  button.onClicked.addListener((tab) => {
    openPanel(tab.id).catch(() => undefined);
    if (tab.id !== undefined) shadePage(tab.id).catch(() => undefined);
  });
}

/** A step beyond the sequence (it was shortened) counts as its last. */
function compile(group: Group): ReturnType<typeof compileGroup> {
  const sequence = findSequence(group.sequence);
  return compileGroup({ ...group, step: Math.min(group.step, sequence?.steps.length ?? 0) }, sequence);
}
