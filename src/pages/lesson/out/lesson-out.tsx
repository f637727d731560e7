import { useState } from 'preact/hooks';
import { accentOf } from '../../../analyze/index.ts';
import type { Group } from '../../../analyze/types.ts';
import type { PlannedPart } from '../../../lesson/index.ts';
import type { Passage } from '../../../passage/kept/passage.ts';
import { cleanText } from '../../../passage/print/clean-text.ts';
import { nameFile } from '../../../passage/print/name-file.ts';
import { OutButtons } from '../../../passage/print/out-buttons.tsx';
import { useChoices } from '../../../passage/print/use-choices.ts';
import { sourceLine } from '../../../passage/source-line.ts';
import { LessonPaper, type LessonPaperProps } from './lesson-paper.tsx';
import './lesson-paper.css';
import { say } from '../../../wording/say.ts';
import { LessonPrintView } from './lesson-print-view.tsx';
import { type Audience, printParts, sheetLanguage } from './printed-part.ts';
import { writeLessonBody, writeLessonHtml } from './write-lesson-html.tsx';
import { writeLessonText } from './write-lesson-text.ts';

interface LessonOutProps {
  readonly parts: readonly PlannedPart[];
  /** The title of the passage, or empty. */
  readonly title: string;
  readonly group: Group;
  readonly passage: Passage | null;
  /** Called when the lesson is printed, saved or copied. */
  readonly onOut: () => void;
}

/** Lets the teacher print, save or copy a lesson, as the pupils’ sheet or the teacher’s key. */
export function LessonOut({ parts, title, group, passage, onOut }: LessonOutProps) {
  const [audience, setAudience] = useState<Audience>('pupils');
  const [choices, setChoices] = useChoices();
  const source = passage && sourceLine(passage);
  const language = sheetLanguage(accentOf(group));
  const paper = (): LessonPaperProps => ({
    title: cleanText(title),
    nameLine: audience === 'pupils' && choices.nameLine,
    parts: printParts(parts, audience),
    source: source && cleanText(source),
  });
  return (
    <OutButtons
      name={(extension) =>
        nameFile(`Lesson ${title} ${audience === 'key' ? '(key)' : ''}`, group.name, extension)
      }
      docx={async () => {
        onOut();
        return (await import('./write-lesson-docx.ts')).writeLessonDocx(paper(), choices);
      }}
      html={() => {
        onOut();
        return writeLessonHtml(paper(), choices, language);
      }}
      text={() => {
        onOut();
        return writeLessonText(paper());
      }}
      richText={() => writeLessonBody(paper())}
      print={(close) => (
        <LessonPrintView
          language={language}
          audience={audience}
          choices={choices}
          onAudience={setAudience}
          onChange={setChoices}
          onClose={close}
          onShown={onOut}
        >
          <LessonPaper {...paper()} />
        </LessonPrintView>
      )}
    >
      <label>
        <span class="unseen">{say('lesson.whichSheet')}</span>
        <select
          class="field lesson-audience"
          value={audience}
          onChange={(event) => setAudience(event.currentTarget.value as Audience)}
        >
          <option value="pupils">{say('lesson.pupilsSheet')}</option>
          <option value="key">{say('lesson.yourKey')}</option>
        </select>
      </label>
    </OutButtons>
  );
}
