import { card } from './es/card.ts';
import { desk } from './es/desk.ts';
import { files } from './es/files.ts';
import { groups } from './es/groups.ts';
import { help } from './es/help.ts';
import { host } from './es/host.ts';
import { lesson } from './es/lesson.ts';
import { lessonLabels } from './es/lesson-labels.ts';
import { manifest } from './es/manifest.ts';
import { panel } from './es/panel.ts';
import { passage } from './es/passage.ts';
import { patterns } from './es/patterns.ts';
import { pdf } from './es/pdf.ts';
import { picture } from './es/picture.ts';
import { print } from './es/print.ts';
import { privacy } from './es/privacy.ts';
import { report } from './es/report.ts';
import { sequences } from './es/sequences.ts';
import { shelf } from './es/shelf.ts';
import { steps } from './es/steps.ts';
import { terms } from './es/terms.ts';
import { ui } from './es/ui.ts';
import { welcome } from './es/welcome.ts';
import type { Translation } from './translation.ts';

/** All Spanish texts of the interface. */
export const spanish = {
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
} as const satisfies Translation;
