import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { globSync } from 'tinyglobby';
import { expect, test } from 'vitest';
import { editors } from './attack/editors.ts';

/**
 * Nothing typed is lost. Every text field of a page is saved at least once a second while somebody types, or has a
 * reason why it need not be saved. `as` names the editor in `tests/attack/editors.ts` for which a browser is killed.
 */
type Kept = { readonly as: string } | { readonly reason: string };

const CHOICE = 'a choice of a moment, made again with a press';
const FIELDS: Readonly<Record<string, readonly Kept[]>> = {
  'pages/desk/begin-view.tsx': [{ as: 'the topic of a passage' }],
  'pages/desk/intake-view.tsx': [{ as: 'a text for the desk' }],
  // The first field is the title, and the second field is the source.
  'pages/desk/source-fields.tsx': [{ as: 'the title of a passage' }, { as: 'the title of a passage' }],
  // A meaning is a part of the passage, and is saved with the passage.
  'pages/desk/story-words.tsx': [{ as: 'the title of a passage' }],
  'pages/groups/paste-view.tsx': [{ as: 'a pasted sequence' }],
  'pages/groups/pattern-picker.tsx': [{ reason: 'a search: what is found is added by a press, and kept' }],
  'pages/groups/read-now-view.tsx': [{ reason: CHOICE }],
  'pages/groups/text-field.tsx': [{ as: 'the name of a group' }],
  'pages/groups/words-field.tsx': [{ as: 'the names of a group' }],
  'pages/lesson/kept-field.tsx': [{ as: 'a part of a lesson' }, { as: 'a part of a lesson' }],
  'pages/lesson/lesson-view.tsx': [{ reason: CHOICE }],
  'pages/lesson/presets-bar.tsx': [{ as: 'the name of a preset' }],
  'pages/lesson/words-correct.tsx': [{ reason: CHOICE }],
  'pages/panel/fault-details.tsx': [{ reason: 'it is only read' }],
  'pages/pdf/pdf-pages.tsx': [{ reason: CHOICE }],
  'pages/picture/picture-view.tsx': [
    { reason: 'it stands beside its picture, which is never stored and is read again when it is opened' },
  ],
  'pages/shelf/add-view.tsx': [{ as: 'tags of many texts' }],
  'pages/shelf/notes-field.tsx': [{ as: 'notes on a text of the shelf' }],
  'pages/shelf/shelf-filters.tsx': [{ reason: 'a search' }],
  'pages/shelf/tabs-part.tsx': [{ as: 'addresses for the shelf' }],
  'pages/shelf/tag-field.tsx': [{ as: 'tags of a text' }],
  'pages/shelf/text-view.tsx': [{ as: 'the title of a text' }],
  'pages/shelf/texts-view.tsx': [{ reason: CHOICE }],
  'pages/welcome/group-step.tsx': [{ as: 'the name of a first group' }],
};

/** Returns the number of fields in each file, without checkboxes, radio buttons, sliders and file fields. */
function listFields(): Record<string, number> {
  const root = fileURLToPath(new URL('../src/', import.meta.url));
  const found: Record<string, number> = {};
  for (const file of globSync('**/*.tsx', { cwd: root, ignore: '**/*.test.tsx' }).sort()) {
    const source = readFileSync(`${root}${file}`, 'utf8');
    const count = [...source.matchAll(/<(?:input|textarea)\b(.*?)\/>/gs)].filter(
      ([, attributes]) => !/\btype="(?:checkbox|radio|range|file)"/.test(attributes!),
    ).length;
    if (count > 0) found[file] = count;
  }
  return found;
}

test('each text field is saved while somebody types, or has a reason not to be', () => {
  const named = Object.fromEntries(Object.entries(FIELDS).map(([file, fields]) => [file, fields.length]));
  expect(listFields(), 'name the field in FIELDS of this test').toEqual(named);
});

test('each text field that is saved is also tested with a killed browser', () => {
  const killed = new Set(editors.map(({ name }) => name));
  const named = Object.values(FIELDS)
    .flat()
    .flatMap((field) => ('as' in field ? [field.as] : []));
  expect(named.filter((name) => !killed.has(name))).toEqual([]);
});
