import { compileGroup, createJudge, type Judge, vet } from '../analyze/index.ts';
import type { Group } from '../analyze/types.ts';
import { browser, openPanel } from './browser.ts';
import { chosenGroup, loadGroups } from './groups-store.ts';
import { loadEngine } from './load-engine.ts';
import { type Answers, answer, isQuestion, type ToBackground } from './messages.ts';
import { withinSequence } from './move-group.ts';
import { shadePage } from './page-access.ts';
import { findSequence, loadSequences, type Sequences } from './sequences-store.ts';
import { serveSyncCopy } from './sync-copy.ts';
import { watchStoredGroups } from './watch-stored.ts';

/**
 * Answers panel and pages, and starts shading at a click on the toolbar button. Whatever it needs is read anew
 * after the browser has stopped it; nothing is kept but for speed.
 */
export function serveBackground(): void {
  serveSyncCopy();
  let judge: Promise<Judge> | undefined;
  watchStoredGroups(() => {
    judge = undefined;
  }, new AbortController().signal);

  function loadJudge(): Promise<Judge> {
    judge ??= Promise.all([loadEngine(), loadGroups(), loadSequences()]).then(([engine, groups, sequences]) =>
      createJudge(engine, compile(chosenGroup(groups), sequences)),
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

function compile(group: Group, sequences: Sequences): ReturnType<typeof compileGroup> {
  const sequence = findSequence(sequences, group.sequence);
  return compileGroup(withinSequence(group, sequence), sequence);
}
