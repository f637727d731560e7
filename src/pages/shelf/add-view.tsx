import { useState } from 'preact/hooks';
import type { Group } from '../../analyze/types.ts';
import { typedStore } from '../../host/store/typed-store.ts';
import { FileDrop } from '../../ui/file-drop.tsx';
import { useTyped } from '../../ui/use-typed.ts';
import { say } from '../../wording/say.ts';
import { joinTags } from './add-to-shelf.ts';
import { IntakeProgress } from './intake-progress.tsx';
import { LookedPart } from './looked-part.tsx';
import { TabsPart } from './tabs-part.tsx';
import type { Intake, IntakeChoices } from './use-intake.ts';
import type { Ranker } from './use-ranks.ts';
import type { ReadyShelf } from './use-shelf.ts';

interface AddViewProps {
  readonly shelf: ReadyShelf;
  readonly intake: Intake;
  readonly rank: Ranker;
  readonly mark: number;
  readonly groups: Readonly<Record<string, Group>>;
  readonly stepOf: (group: Group) => number;
}

/** The key under which typed tags are stored before they are used. */
const TAGS = 'tags for all';

/** Adds many texts at once from files and open pages, either to the shelf or only to a table. */
export function AddView({ shelf, intake, rank, mark, groups, stepOf }: AddViewProps) {
  const [goesTo, setGoesTo] = useState<IntakeChoices['goesTo']>('shelf');
  // The texts are the teacher's own files as a rule.
  const [keepsText, setKeepsText] = useState(true);
  const { typed, type: setTags } = useTyped(typedStore, TAGS);
  const tags = typed ?? '';
  const choices: IntakeChoices = {
    goesTo,
    keepsText,
    tags: joinTags([], tags.split(',')),
    lookUp: (key) => void shelf.weigher.weigh(key),
  };
  // The tags stay in the field for more texts, but are not offered again at the next start.
  const noteUsed = (): void => void typedStore.forget(TAGS);
  return (
    <div class="sheet">
      <section class="part" aria-labelledby="choices-title">
        <h2 id="choices-title">{say('shelf.manyAtOnce')}</h2>
        <fieldset class="shelf-choices">
          <legend class="quiet">{say('shelf.whatIsRead')}</legend>
          <label class="tick">
            <input
              type="radio"
              name="goes-to"
              checked={goesTo === 'shelf'}
              onChange={() => setGoesTo('shelf')}
            />{' '}
            {say('shelf.ontoShelf')}
          </label>
          <label class="tick">
            <input
              type="radio"
              name="goes-to"
              checked={goesTo === 'table'}
              onChange={() => setGoesTo('table')}
            />{' '}
            {say('shelf.intoTable')}
          </label>
        </fieldset>
        <label class="tick">
          <input
            type="checkbox"
            checked={keepsText}
            onChange={(event) => setKeepsText(event.currentTarget.checked)}
          />{' '}
          {say('shelf.keepText')}
        </label>
        <label class="picker">
          <span class="quiet">{say('shelf.tagsForAll')}</span>
          <input
            type="text"
            class="field"
            value={tags}
            placeholder={say('shelf.tagsShown')}
            onInput={(event) => setTags(event.currentTarget.value)}
          />
        </label>
      </section>
      <section class="part" aria-labelledby="files-title">
        <h2 id="files-title">{say('shelf.files')}</h2>
        <FileDrop
          label={say('shelf.filesDrop')}
          labelledBy="files-title"
          describedBy="files-hint"
          accept=".txt,.md,.html,.htm,.docx,.pdf,.epub,.png,.jpg,.jpeg,.webp,.avif,.heic,.heif"
          multiple
          onFile={(file) => {
            noteUsed();
            intake.addFiles([file], choices);
          }}
        />
        <p class="quiet" id="files-hint">
          {say('shelf.filesHint')}
        </p>
      </section>
      <TabsPart
        onTake={(tabs) => {
          noteUsed();
          intake.addTabs(tabs, choices);
        }}
      />
      <IntakeProgress intake={intake} />
      <LookedPart {...{ shelf, intake, rank, mark, groups, stepOf, tags: choices.tags }} />
    </div>
  );
}
