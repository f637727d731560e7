import type { RefObject } from 'preact';
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
  /** Where the report is, to be saved. */
  readonly article: RefObject<HTMLElement>;
}

/** One text for one group, to be read, printed or given to a colleague. */
export function ReportView({ text, engine, groups, sequences, groupId, article }: ReportViewProps) {
  const stored = groups.groups[groupId]!;
  const sequence = findSequence(sequences, stored.sequence);
  const group = withinSequence(stored, sequence);
  const { judge, report } = useMemo(() => {
    const judge = judgeWithStoryWords(createJudge(engine, compileGroup(group, sequence)), text.storyWords);
    return { judge, report: vet(text, judge) };
  }, [engine, stored, sequence, text]);
  return (
    <article ref={article} class="report">
      <header class="report-part">
        <h1 lang="en">{text.title}</h1>
        {text.source && <p class="quiet report-source">{text.source}</p>}
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
        <p class="quiet">{say('report.gapsHint')}</p>
        <GapList gaps={report.gaps} group={judge.group} />
      </section>
      <section class="report-part" aria-labelledby="words-title">
        <h2 id="words-title">{say('report.words')}</h2>
        <StandingList words={report.words} />
      </section>
      <section class="report-part" aria-labelledby="settings-title">
        <h2 id="settings-title">{say('report.settings')}</h2>
        <SettingsList group={group} sequence={sequence} storyWords={text.storyWords} />
      </section>
    </article>
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
