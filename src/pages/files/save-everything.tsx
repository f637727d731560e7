import { packEverything } from '../../host/files/everything-store.ts';
import { today } from '../../host/store/move-group.ts';
import { saveFile } from '../../ui/save-file.ts';
import { say } from '../../wording/say.ts';

/** Saves everything kept in this browser in one file. The file name contains `name` and the day. */
export async function saveEverything(name: string): Promise<void> {
  saveFile(`${name}-${today()}.jsonl`, await packEverything());
}

/** The part of the page for saving everything kept in this browser in one file. */
export function SaveEverything() {
  return (
    <section class="part" aria-labelledby="everything-title">
      <h2 id="everything-title">{say('groups.saveEverything')}</h2>
      <p class="quiet">{say('groups.aboutEverything')}</p>
      <button type="button" class="plain" onClick={() => void saveEverything('wordreach-everything')}>
        {say('groups.saveEverything')}
      </button>
    </section>
  );
}
