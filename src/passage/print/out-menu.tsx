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
  /** The group's name. File names contain it, but the sheet never does. */
  readonly groupName: string | null;
  /** `shade` and `engine` are null until the word table is loaded. */
  readonly shade: ((line: string) => ShadedLine) | null;
  readonly engine: Analyzer | null;
}

/** The buttons that print, save or copy a passage from the desk. Every copy has the source line. */
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
