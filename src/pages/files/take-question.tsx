import { useEffect, useRef } from 'preact/hooks';
import type { FileCounts, FileLook, Taking } from '../../host/files/take-file.ts';
import { sayList } from '../../ui/say-list.ts';
import { say } from '../../wording/say.ts';

/** Things named in the question. */
const NAMED = 5;

interface TakeQuestionProps {
  readonly look: FileLook;
  readonly onTake: (how: Taking | 'replace') => void;
  readonly onKeep: () => void;
}

/** Asks how a file is to be taken, where some of it is here in another form or it holds everything; the focus is on leaving it. */
export function TakeQuestion({ look: { whole, counts, clashes }, onTake, onKeep }: TakeQuestionProps) {
  const keep = useRef<HTMLButtonElement>(null);
  useEffect(() => keep.current?.focus(), []);
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
        <p class="take-clashes">{say('groups.clashes', { names: nameSome(clashes) })}</p>
      )}
      <dl class="take-ways">
        {clashes.length > 0 && (
          <div>
            <dt>{answer('merge', say('groups.merge'))}</dt>
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

/** The first names, and `…` where there are more. */
function nameSome(names: readonly string[]): string {
  return names.length > NAMED ? `${names.slice(0, NAMED).join(', ')}, …` : sayList(names);
}

/** `3 groups, 1 sequence of your own and 2 passages`. */
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
