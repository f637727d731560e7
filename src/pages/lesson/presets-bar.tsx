import { useState } from 'preact/hooks';
import { keepPresets, loadPresets, watchPresets } from '../../host/store/presets-store.ts';
import { typedStore } from '../../host/store/typed-store.ts';
import { type LessonPreset, onePage } from '../../lesson/index.ts';
import { noteEdit } from '../../ui/edit-log.ts';
import { useTyped } from '../../ui/use-typed.ts';
import { useWatched } from '../../ui/use-watched.ts';
import { say } from '../../wording/say.ts';
import { sayLabel } from './say-label.ts';

interface PresetsBarProps {
  readonly onUse: (preset: LessonPreset) => void;
  /** Makes a named preset of the parts that are on the sheet now. */
  readonly presetNow: (name: string) => LessonPreset;
}

/**
 * Lets the teacher choose a lesson preset, either one that comes with Wordreach or one of the teacher’s own. The bar
 * also saves and deletes the teacher’s own presets.
 */
export function PresetsBar({ onUse, presetNow }: PresetsBarProps) {
  const own = useWatched(loadPresets, watchPresets);
  const [chosen, setChosen] = useState('');
  const { typed, type, done } = useTyped(typedStore, 'preset name');
  const [isAsked, ask] = useState(false);
  const name = typed ?? (isAsked ? '' : null);
  if (!own) return null;
  const kept = own.find((preset) => preset.name === chosen);
  const save = (): void => {
    const preset = presetNow(name ?? '');
    if (preset.name === '' || preset.parts.length === 0) return;
    done(
      editPresets(
        own,
        [...own.filter((each) => each.name !== preset.name), preset],
        say('lesson.presetSaved', { name: preset.name }),
      ),
    );
    setChosen(preset.name);
    ask(false);
  };
  return (
    <div class="lesson-bar">
      <label>
        <span class="quiet">{say('lesson.preset')}</span>{' '}
        <select
          class="field"
          value={kept || chosen === onePage.name ? chosen : ''}
          onChange={({ currentTarget: { value } }) => {
            setChosen(value);
            const preset = value === onePage.name ? onePage : own.find((each) => each.name === value);
            if (preset) onUse(preset);
          }}
        >
          <option value="">{say('lesson.choosePreset')}</option>
          <option value={onePage.name}>{sayLabel(onePage.name)}</option>
          {own
            .filter((preset) => preset.name !== onePage.name)
            .map((preset) => (
              <option key={preset.name} value={preset.name}>
                {preset.name}
              </option>
            ))}
        </select>
      </label>
      {name === null ? (
        <button type="button" class="plain" onClick={() => ask(true)}>
          {say('lesson.savePreset')}
        </button>
      ) : (
        <form
          class="row"
          onSubmit={(event) => {
            event.preventDefault();
            save();
          }}
        >
          <input
            class="field"
            type="text"
            maxLength={60}
            aria-label={say('lesson.presetName')}
            placeholder={say('lesson.presetName')}
            value={name}
            ref={(input) => {
              // A name restored from an earlier visit does not take the focus.
              if (isAsked) input?.focus();
            }}
            onInput={({ currentTarget }) => type(currentTarget.value)}
          />
          <button type="submit" class="plain" disabled={name.trim() === ''}>
            {say('lesson.save')}
          </button>
          <button
            type="button"
            class="plain"
            onClick={() => {
              done();
              ask(false);
            }}
          >
            {say('lesson.cancel')}
          </button>
        </form>
      )}
      {kept && name === null && (
        <button
          type="button"
          class="plain"
          onClick={() => {
            void editPresets(
              own,
              own.filter((each) => each !== kept),
              say('lesson.presetDeleted', { name: kept.name }),
            );
            setChosen('');
          }}
        >
          {say('lesson.deletePreset', { name: kept.name })}
        </button>
      )}
    </div>
  );
}

async function editPresets(
  before: readonly LessonPreset[],
  after: readonly LessonPreset[],
  says: string,
): Promise<void> {
  await keepPresets(after);
  noteEdit(says, () => keepPresets(before));
}
