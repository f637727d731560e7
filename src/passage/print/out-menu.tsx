import { useMemo } from 'preact/hooks';
import type { Analyzer } from '../../analyze/index.ts';
import type { Passage, PassageVersion } from '../kept/passage.ts';
import type { ShadedLine } from '../shade-line.ts';
import { makeSheet, plainContent } from './make-sheet.ts';
import { nameFile } from './name-file.ts';
import { OutButtons } from './out-buttons.tsx';
import { PrintView } from './print-view.tsx';
import { useChoices } from './use-choices.ts';
import { writeHtml, writeHtmlBody } from './write-html.ts';
import { writeText } from './write-text.ts';

interface OutMenuProps {
  readonly passage: Passage;
  readonly version: PassageVersion;
  /** The group's name goes into the names of files, never onto the sheet. */
  readonly groupName: string | null;
  /** Both null until the word table is there. */
  readonly shade: ((line: string) => ShadedLine) | null;
  readonly engine: Analyzer | null;
}

/** The ways a passage leaves the desk. Each has the source line. */
export function OutMenu({ passage, version, groupName, shade, engine }: OutMenuProps) {
  const [choices, setChoices] = useChoices();
  const words = useMemo(() => shade && engine && { shade, engine }, [shade, engine]);
  const chosen = () => makeSheet(passage, version, choices, words);
  const plain = () => makeSheet(passage, version, plainContent, null);
  return (
    <OutButtons
      name={(extension) => nameFile(passage.title, groupName, extension)}
      docx={async () => (await import('./write-docx.ts')).writeDocx(chosen(), choices)}
      html={() => writeHtml(chosen(), choices)}
      text={() => writeText(plain())}
      richText={() => writeHtmlBody(plain())}
      print={(close) => (
        <PrintView
          sheet={chosen()}
          choices={choices}
          canMark={words !== null}
          onChange={setChoices}
          onClose={close}
        />
      )}
    />
  );
}
