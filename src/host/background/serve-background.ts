import {
  type CompiledGroup,
  compileGroup,
  createJudge,
  groupAhead,
  type Judge,
  markReading,
  soundStyleOf,
  splitKey,
  tallyText,
  vet,
} from '../../analyze/index.ts';
import type { Group, Sequence, Standing, WordKey } from '../../analyze/types.ts';
import type { Shown, WordsAsked } from '../../contract/page-contract.ts';
import { reachFor } from '../../swap/index.ts';
import { say } from '../../wording/say.ts';
import { browser, openPanel } from '../browser.ts';
import { loadCommonWords } from '../data/load-common-words.ts';
import { loadEarlyEngine, loadEngine } from '../data/load-engine.ts';
import { loadOnce } from '../data/load-once.ts';
import { loadSwapper } from '../data/load-swapper.ts';
import { askPage, askWords, setScope } from '../page-talk/client.ts';
import { hearMessages } from '../page-talk/hear-messages.ts';
import { type Answers, answer, isQuestion, type ToBackground } from '../page-talk/messages.ts';
import { bringPart, shadeFrames, shadePage, toggleShading, watchPageNews } from '../page-talk/page-access.ts';
import { whenTrialEnds } from '../page-talk/trial-line.ts';
import { fetchPicture, takePicture, takeScreen } from '../pictures/take-picture.ts';
import { changeGroup, countedAs } from '../store/change-group.ts';
import { expectFirstShelf } from '../store/first-shelf.ts';
import { changeChosen, loadGroups, shownGroup, tryStep } from '../store/groups-store.ts';
import { withinSequence } from '../store/move-group.ts';
import { loadSequence } from '../store/sequences-store.ts';
import { watchStoredGroups } from '../store/watch-stored.ts';
import { serveSyncCopy } from '../sync/sync-copy.ts';
import { showBadge } from './show-badge.ts';

const CHECK_SELECTION = 'check-selection';
const READ_PICTURE = 'read-picture';

/** A made-up word that is in no list. */
const UNLISTED = 'quaymark';
/** The number of words judged before a waiting question gets its turn. Judging them takes some milliseconds. */
const AT_ONCE = 20;

/**
 * Answers the panel and the pages. Starts shading at a click on the toolbar button, at a shortcut, or from the context
 * menu. When the background starts again after the browser has stopped it, all data is read again. Data is kept in
 * memory for speed only.
 */
export function serveBackground(): void {
  serveSyncCopy();
  const forEver = new AbortController().signal;
  let ready: Judge | undefined;
  /** The judge for the group as it was before its last change. A new judge reuses the analyses of this judge. */
  let before: Judge | undefined;
  const loadJudges = loadOnce(async () => {
    const [{ engine, isListed }, groups] = await Promise.all([loadEarlyEngine(), loadGroups()]);
    const group = shownGroup(groups);
    const sequence = await loadSequence(group.sequence);
    const judges = createJudges(
      group,
      sequence,
      (compiled) => before?.forGroup(compiled) ?? createJudge(engine, compiled),
    );
    before = judges.verdictOf;
    return { isListed, ...judges };
  });
  const loadJudge = async (): Promise<Judge> => (await loadWholeJudges()).verdictOf;
  async function loadWholeJudges() {
    const [judges] = await Promise.all([loadJudges(), loadEngine()]);
    return judges;
  }
  watchStoredGroups(() => loadJudges.forget(), forEver);

  /**
   * Prepares a judge while a page looks for its story. This opens the guessing model, which takes some time,
   * and judges the commonest words. These words make up most of any page, and the judge remembers them. Each judge
   * needs this once.
   */
  async function getReady(): Promise<void> {
    const [verdictOf, words] = await Promise.all([loadJudge(), loadCommonWords()]);
    if (verdictOf === ready) return;
    ready = verdictOf;
    for (const [i, word] of [UNLISTED, ...words].entries()) {
      verdictOf(word);
      // A question that has arrived meanwhile is answered first.
      if (i % AT_ONCE === 0) await new Promise((resolve) => setTimeout(resolve));
    }
  }

  const answers: Answers<ToBackground> = {
    judge: async ({ keys, homographs }) => {
      const { isListed, show } = await loadJudges();
      const readings = homographs.map(nameReading);
      // Words in the table are judged without waiting for the model.
      if (![...keys, ...readings].every((key) => isListed(splitKey(key).word.toLowerCase())))
        await loadEngine();
      return {
        standings: keys.map(show),
        readings: readings.map((key) => ({ key, standing: show(key) })),
      };
    },
    bring: async (part, sender) => {
      await bringPart(part, sender);
      // Runs after the page has received its answer.
      setTimeout(() => void getReady().catch(() => undefined));
    },
    shadeFrames: async (_nothing, { tab }) => {
      if (tab?.id !== undefined) await shadeFrames(tab.id);
    },
    report: async (page) => {
      const { verdictOf, show } = await loadWholeJudges();
      const soon = page.words.filter(([key]) => show(key) === 'soon');
      return { ...vet(page, verdictOf), soon: soon.reduce((sum, [, count]) => sum + count, 0) };
    },
    explain: async (key) => {
      const [engine, verdictOf, groups] = await Promise.all([loadEngine(), loadJudge(), loadGroups()]);
      const group = shownGroup(groups);
      const verdict = verdictOf(key);
      const steps = verdict.missing.map((id) => [id, verdictOf.group.stepOf(id)] as const);
      const spoken = engine.speaking(verdictOf.group.speech);
      return {
        analysis: spoken.analyze(key),
        verdict,
        sounds: soundStyleOf(verdictOf.group),
        steps: Object.fromEntries(steps),
        counts: countedAs(group, key),
        notYet: verdict.missing.filter((id) => group.notYet.includes(id)),
      };
    },
    swaps: async ({ sentence, start, end }) => {
      const [swapper, verdictOf] = await Promise.all([loadSwapper(), loadJudge()]);
      const { swaps, best } = swapper.findSwaps(sentence, start, end, {
        reach: reachFor(verdictOf),
      });
      return swaps.slice(0, best).map(({ text, reads }) => ({ text, reads }));
    },
    act: (action) => changeChosen((group) => changeGroup(group, action)),
    takeScreen,
    fetchPicture,
  };
  hearMessages((message, sender) =>
    isQuestion(message, 'background') ? answer(answers, message, sender) : undefined,
  );

  browser.runtime.onInstalled.addListener(({ reason, temporary }) => {
    // A developer's copy in Firefox is installed again each time.
    if (reason !== 'install' || temporary) return;
    void expectFirstShelf().catch(() => undefined);
    void browser.tabs.create({ url: browser.runtime.getURL('/welcome.html') });
  });
  whenTrialEnds(() => void tryStep(null).catch(() => undefined));
  serveBadge(loadJudge, forEver);
  serveActions();
}

/**
 * Returns a homograph's key with the reading that the homograph has at its place in the text. If this fails, the
 * reading stays open and no other word is affected.
 */
function nameReading({ text, start, end, key }: WordsAsked['homographs'][number]): WordKey {
  try {
    return markReading(text, start, end, key);
  } catch (error) {
    console.error(error);
    return key;
  }
}

/** Shows the reach of every shaded page on the toolbar button. */
function serveBadge(loadJudge: () => Promise<Judge>, signal: AbortSignal): void {
  const waiting = new Map<number, 'working' | 'again'>();
  async function update(tab: number): Promise<void> {
    if (waiting.has(tab)) {
      waiting.set(tab, 'again');
      return;
    }
    do {
      waiting.set(tab, 'working');
      const words = await askWords(tab);
      await showBadge(tab, words && tallyText(words, await loadJudge()).reach).catch(() => undefined);
    } while (waiting.get(tab) === 'again');
    waiting.delete(tab);
  }
  watchPageNews((tab) => void update(tab).catch(() => waiting.delete(tab)), signal);
}

/** The teacher's actions without the panel: button, shortcuts, context menu. */
function serveActions(): void {
  const button = browser.action ?? browser.browserAction;
  button.onClicked.addListener((tab) => {
    openPanel(tab.id).catch(() => undefined);
    // The panel tells the teacher what to do. The console gives the reason, for anyone who looks for the cause.
    if (tab.id !== undefined)
      toggleShading(tab.id).catch((error: unknown) => console.info('This page was not shaded.', error));
  });
  browser.commands.onCommand.addListener((command: string, tab?: { id?: number }) => {
    if (command === 'open-desk') void openDesk();
    const direction = command === 'next-word' ? 1 : command === 'previous-word' ? -1 : null;
    if (direction !== null && tab?.id !== undefined) void stepIn(tab.id, direction);
  });
  // The entries are created again at every start, since Firefox forgets them when it closes.
  void browser.contextMenus.removeAll().then(() => {
    browser.contextMenus.create({
      id: CHECK_SELECTION,
      title: say('manifest.checkSelection'),
      contexts: ['selection'],
    });
    browser.contextMenus.create({
      id: READ_PICTURE,
      title: say('manifest.readPicture'),
      contexts: ['image'],
    });
  });
  browser.contextMenus.onClicked.addListener((info, tab) => {
    if (tab?.id === undefined) return;
    if (info.menuItemId === READ_PICTURE) void takePicture(tab, info.srcUrl ?? '', info.frameId ?? 0);
    if (info.menuItemId !== CHECK_SELECTION) return;
    openPanel(tab.id).catch(() => undefined);
    void checkSelection(tab.id).catch(() => undefined);
  });
}

async function stepIn(tab: number, direction: 1 | -1): Promise<void> {
  await shadePage(tab).catch(() => undefined);
  await askPage(tab, 'step', direction, 0);
}

async function checkSelection(tab: number): Promise<void> {
  await shadePage(tab);
  await shadeFrames(tab);
  await setScope(tab, 'selection');
}

async function openDesk(): Promise<void> {
  await browser.tabs.create({ url: browser.runtime.getURL('/desk.html') });
}

/**
 * Creates the functions that judge words for a group. `verdictOf` says what a word is to the group now. `show` says
 * what pages show of the word. For `show`, a word that is beyond the group is also judged after the group's next steps.
 */
function createJudges(
  group: Group,
  sequence: Sequence | null,
  judgeFor: (group: CompiledGroup) => Judge,
): { readonly verdictOf: Judge; show(key: WordKey): Shown } {
  const compile = (group: Group): CompiledGroup => compileGroup(withinSequence(group, sequence), sequence);
  const verdictOf = judgeFor(compile(group));
  let standingAhead: ((key: WordKey) => Standing) | undefined;
  return {
    verdictOf,
    show(key) {
      const { standing } = verdictOf(key);
      if (standing !== 'beyond') return standing;
      standingAhead ??= verdictOf.standingFor(compile(groupAhead(group, sequence?.steps.length ?? 0)));
      return standingAhead(key) === 'beyond' ? 'beyond' : 'soon';
    },
  };
}
