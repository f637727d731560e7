import { useEffect, useRef } from 'preact/hooks';
import type { Clash, ClashSide, FileCounts, FileLook, Taking } from '../../host/files/take-file.ts';
import { sayDay } from '../../ui/say-day.ts';
import { sayList } from '../../ui/say-list.ts';
import { say } from '../../wording/say.ts';

/** The number of things named in the question. */
const NAMED = 5;

interface TakeQuestionProps {
  readonly look: FileLook;
  readonly onTake: (how: Taking | 'replace') => void;
  readonly onKeep: () => void;
}

/**
 * Asks how to take a file. The question appears when the file holds everything, or when this browser has some of the
 * content in another form. The focus starts on the answer that does not take the file.
 */
export function TakeQuestion({ look: { whole, counts, clashes }, onTake, onKeep }: TakeQuestionProps) {
  const keep = useRef<HTMLButtonElement>(null);
  useEffect(() => keep.current?.focus(), []);
  const only = clashes.length === 1 ? clashes[0]!.name : null;
  const answer = (how: Taking | 'replace', text: string) => (
    <button type="button" class="plain" onClick={() => onTake(how)}>
      {text}
    </button>
  );
  return (
    <div class="note take" role="alert">
      <p>
        {whole
          ? say('groups.holdsEverything', { counts: describeCounts(counts) })
          : say('groups.holds', { counts: describeCounts(counts) })}
      </p>
      {clashes.length > 0 && (
        <>
          <p>{only ? say('groups.whichOne', { name: only }) : say('groups.whichOnes')}</p>
          <Clashes clashes={clashes} />
        </>
      )}
      <dl class="take-ways">
        {clashes.length > 0 && (
          <div>
            <dt>{answer('merge', only ? say('groups.takeOne', { name: only }) : say('groups.merge'))}</dt>
            <dd>{say('groups.aboutMerge')}</dd>
          </div>
        )}
        <div>
          <dt>{answer('add', say(clashes.length > 0 ? 'groups.addBeside' : 'groups.addAll'))}</dt>
          <dd>{say(clashes.length > 0 ? 'groups.aboutAdd' : 'groups.aboutAddAll')}</dd>
        </div>
        <div>
          <dt>
            <button ref={keep} type="button" class="plain" onClick={onKeep}>
              {say('groups.keepAll')}
            </button>
          </dt>
          <dd>{say('groups.aboutKeep')}</dd>
        </div>
        {whole && (
          <div class="take-replace">
            <dt>{answer('replace', say('groups.replaceAll'))}</dt>
            <dd>{say('groups.aboutReplace')}</dd>
          </div>
        )}
      </dl>
    </div>
  );
}

/**
 * Lists the items that differ, with step and day in this browser and in the file, so that the teacher can tell which
 * version is newer.
 */
function Clashes({ clashes }: { clashes: readonly Clash[] }) {
  const more = clashes.length - NAMED;
  return (
    <table class="take-clashes">
      <thead>
        <tr>
          <th scope="col">{say('groups.differs')}</th>
          <th scope="col">{say('groups.inBrowser')}</th>
          <th scope="col">{say('groups.inFile')}</th>
        </tr>
      </thead>
      <tbody>
        {clashes.slice(0, NAMED).map(({ name, here, file }, i) => {
          const isSame = here.exceptions === file.exceptions;
          const sides = [here, file].map((side) => describeSide(isSame ? { ...side, exceptions: 0 } : side));
          const isAlike = sides[0] === sides[1];
          return (
            <tr key={i}>
              <th scope="row">{name}</th>
              {sides.map((side, column) => (
                <td key={column}>
                  {isAlike ? [side, say('groups.detailsDiffer')].filter(Boolean).join(', ') : side}
                </td>
              ))}
            </tr>
          );
        })}
        {more > 0 && (
          <tr>
            <td colSpan={3}>{say('groups.moreDiffer', { count: more })}</td>
          </tr>
        )}
      </tbody>
    </table>
  );
}

/** `step 24 since 3 Nov 2026, 2 exceptions`. */
function describeSide({ step, since, exceptions = 0, steps, saved }: ClashSide): string {
  const parts = [
    step !== undefined &&
      (since
        ? say('groups.stepSince', { step, day: sayDay(Date.parse(since), 'medium', 'UTC') })
        : say('groups.stepHere', { step })),
    exceptions > 0 && say('groups.exceptionsHere', { count: exceptions }),
    steps !== undefined && say('groups.stepsHere', { count: steps }),
    saved !== undefined && say('groups.savedOn', { day: sayDay(saved, 'medium') }),
  ];
  return parts.filter(Boolean).join(', ');
}

/** Describes the content of a file in counts, as in `3 groups, 1 sequence of your own and 2 passages`. */
export function describeCounts({ groups, sequences, presets, passages, lessons, texts }: FileCounts): string {
  const parts = [
    groups > 0 && say('groups.countGroups', { count: groups }),
    sequences > 0 && say('groups.countSequences', { count: sequences }),
    presets > 0 && say('groups.countPresets', { count: presets }),
    passages > 0 && say('groups.countPassages', { count: passages }),
    lessons > 0 && say('groups.countLessons', { count: lessons }),
    texts > 0 && say('groups.countTexts', { count: texts }),
  ].filter((part) => part !== false);
  return parts.length === 0 ? say('groups.nothingButStarters') : sayList(parts);
}
