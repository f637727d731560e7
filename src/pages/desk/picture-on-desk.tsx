import { useMemo } from 'preact/hooks';
import type { Groups } from '../../host/store/groups-store.ts';
import type { Sequences } from '../../host/store/sequences-store.ts';
import { LoadFault, useLoaded } from '../../ui/use-loaded.ts';
import { say } from '../../wording/say.ts';

interface PictureOnDeskProps {
  readonly picture: File;
  readonly groups: Groups;
  readonly sequences: Sequences;
  readonly onPassage: (id: string) => void;
  readonly onLeave: () => void;
}

/** The picture view is loaded on demand, since few texts are pictures. */
const loadPictureView = () => import('../picture/picture-view.tsx').then(({ PictureView }) => PictureView);

/** Shows a picture of text that was opened at the desk, and makes a passage of its text. */
export function PictureOnDesk({ picture, groups, sequences, onPassage, onLeave }: PictureOnDeskProps) {
  const PictureView = useLoaded(loadPictureView);
  const given = useMemo(
    () => [{ blob: picture, title: picture.name.replace(/\.[^.]+$/, ''), url: null, isScreen: false }],
    [picture],
  );
  return (
    <div class="sheet">
      <p class="row">
        <button type="button" class="plain" onClick={onLeave}>
          {say('files.openAnother')}
        </button>
        <span class="quiet">{say('picture.about')}</span>
      </p>
      {PictureView instanceof LoadFault ? (
        <p class="note note-wrong" role="alert">
          {say('files.noReader')}
        </p>
      ) : (
        PictureView && <PictureView {...{ given, groups, sequences, onPassage }} />
      )}
    </div>
  );
}
