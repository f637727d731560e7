import { card } from './en/card.ts';
import { desk } from './en/desk.ts';
import { files } from './en/files.ts';
import { groups } from './en/groups.ts';
import { help } from './en/help.ts';
import { host } from './en/host.ts';
import { lesson } from './en/lesson.ts';
import { lessonLabels } from './en/lesson-labels.ts';
import { manifest } from './en/manifest.ts';
import { panel } from './en/panel.ts';
import { passage } from './en/passage.ts';
import { patterns } from './en/patterns.ts';
import { pdf } from './en/pdf.ts';
import { picture } from './en/picture.ts';
import { print } from './en/print.ts';
import { privacy } from './en/privacy.ts';
import { report } from './en/report.ts';
import { sequences } from './en/sequences.ts';
import { shelf } from './en/shelf.ts';
import { steps } from './en/steps.ts';
import { terms } from './en/terms.ts';
import { ui } from './en/ui.ts';
import { welcome } from './en/welcome.ts';

/**
 * All English texts of the interface, by the part of the product that shows them. A text is a sentence with
 * placeholders in braces (`{name}`), or a set of forms by number (`one`, `other`). The placeholder `count` chooses the
 * form.
 */
export const english = {
  card,
  desk,
  files,
  groups,
  help,
  host,
  lesson,
  lessonLabels,
  manifest,
  panel,
  passage,
  patterns,
  pdf,
  picture,
  print,
  privacy,
  report,
  sequences,
  shelf,
  steps,
  terms,
  ui,
  welcome,
} as const;

export type English = typeof english;
