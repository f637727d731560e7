import type { ComponentChildren, RefObject } from 'preact';
import { useMemo } from 'preact/hooks';
import { type Analyzer, compileGroup, createJudge, vet } from '../../analyze/index.ts';
import { findGroup, type Groups } from '../../host/store/groups-store.ts';
import { today, withinSequence } from '../../host/store/move-group.ts';
import { findSequence, type Sequences } from '../../host/store/sequences-store.ts';
import { judgeWithStoryWords } from '../../passage/with-story-words.ts';
import { Reach } from '../../ui/reach.tsx';
import { sayDay } from '../../ui/say-day.ts';
import { say } from '../../wording/say.ts';
import { ClimbPart } from './climb-part.tsx';
import { GapList } from './gap-list.tsx';
import type { ReportText } from './report-text.ts';
import { SettingsList } from './settings-list.tsx';
import { StandingList } from './standing-list.tsx';

interface ReportViewProps {
  readonly text: ReportText;
  readonly engine: Analyzer;
  readonly groups: Groups;
  readonly sequences: Sequences;
  readonly groupId: string;
  /** The element that holds the report, for saving it. */
  readonly article: RefObject<HTMLElement>;
}

/** The numbers of missing patterns and words that are shown without unfolding: as many as fit on one sheet of paper. */
const GAPS = 6;
const GAP_WORDS = 6;
const WORDS = 64;

/**
 * Shows the report on one text for one group, to be read, printed or given to a colleague. The visible part fits on one
 * page, and the rest is folded.
 */
export function ReportView({ text, engine, groups, sequences, groupId, article }: ReportViewProps) {
  const stored = groups.groups[groupId]!;
  const sequence = findSequence(sequences, stored.sequence);
  const group = withinSequence(stored, sequence);
  const { judge, report } = useMemo(() => {
    const judge = judgeWithStoryWords(createJudge(engine, compileGroup(group, sequence)), text.storyWords);
    return { judge, report: vet(text, judge) };
  }, [engine, stored, sequence, text]);
  const hard = report.words.filter(({ standing }) => standing === 'beyond');
  return (
    <article ref={article} class="report report-sheet">
      <header class="report-part">
        <h1 lang="en">{text.title}</h1>
        {text.source && <p class="quiet report-source">{say('passage.source', { source: text.source })}</p>}
        <p>
          {sequence
            ? say('report.forAtStep', {
                group: group.name,
                step: group.step,
                sequence: sequence.name,
                day: sayToday(),
              })
            : say('report.forGroup', { group: group.name, day: sayToday() })}{' '}
          {describeText(text, groups)}
        </p>
        <p class="note">{say('report.deference')}</p>
      </header>
      <Reach tally={report.tally} />
      <ClimbPart {...{ text, engine, sequences, groupId }} groups={groups.groups} />
      <section class="report-part" aria-labelledby="gaps-title">
        <h2 id="gaps-title">{say('ui.missingPatterns')}</h2>
        {report.gaps.length > 0 && <p class="quiet gaps-hint">{say('report.gapsHint')}</p>}
        <GapList gaps={report.gaps.slice(0, GAPS)} group={judge.group} most={GAP_WORDS} />
      </section>
      {hard.length > 0 && (
        <section class="report-part" aria-labelledby="hard-title">
          <h2 id="hard-title">{say('report.beyond')}</h2>
          <p class="report-words">
            <span lang="en">
              {hard
                .slice(0, WORDS)
                .map(({ word }) => word)
                .join(', ')}
            </span>
            {hard.length > WORDS && (
              <span class="quiet"> {say('report.andMore', { count: hard.length - WORDS })}</span>
            )}
          </p>
        </section>
      )}
      <div class="report-folds">
        {report.gaps.length > GAPS && (
          <Fold says={say('report.allGaps', { count: report.gaps.length })}>
            <GapList gaps={report.gaps} group={judge.group} />
          </Fold>
        )}
        <Fold says={say('report.allWords', { count: report.words.length })}>
          <StandingList words={report.words} />
        </Fold>
        <Fold says={say('report.settings')}>
          <SettingsList group={group} sequence={sequence} storyWords={text.storyWords} />
        </Fold>
      </div>
    </article>
  );
}

function Fold({ says, children }: { says: string; children: ComponentChildren }) {
  return (
    <details class="report-fold">
      <summary>
        <h2>{says}</h2>
      </summary>
      <div class="report-part">{children}</div>
    </details>
  );
}

function describeText({ groupId, adapted }: ReportText, groups: Groups): string {
  if (groupId === null) return '';
  return adapted
    ? say('report.adaptedFor', { group: findGroup(groups, groupId)?.name ?? '?' })
    : say('report.asFound');
}

function sayToday(): string {
  return sayDay(Date.parse(today()), 'long', 'UTC');
}
