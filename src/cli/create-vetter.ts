import {
  type Climber,
  climbText,
  compileGroup,
  createClimber,
  createJudge,
  createReporter,
  rememberWeighed,
} from '../analyze/index.ts';
import { countWords, expectWords, shareOf } from './count-words.ts';
import { describePattern } from './describe-pattern.ts';
import { explainFault } from './explain-fault.ts';
import type { FoundText } from './find-texts.ts';
import { loadEngine } from './load-engine.ts';
import { openText } from './open-text.ts';
import { readBytes } from './read-file.ts';
import type { VetOptions } from './read-vet-options.ts';
import type { GroupReport, TextRecord, VettedGroup } from './text-record.ts';

/** The settings of a vetter. They are plain data, so that they can be sent to another thread. */
export interface VetterSettings {
  readonly groups: readonly VettedGroup[];
  /** Whether reports list every word. */
  readonly words: boolean;
  /** The form in which records of files are printed. */
  readonly out: NonNullable<VetOptions['out']>;
}

/** Vets one text after another for the same groups. */
export interface Vetter {
  /** Returns the record of a file. If the file has a fault, the record describes the fault. */
  vetFile(text: FoundText): Promise<TextRecord>;
  /** Throws `FileFault` if the text has no words. */
  vetText(text: string): GroupReport[];
}

/**
 * After this many distinct words the word analyses are discarded, so that they never fill the memory. A word takes two
 * kilobytes with its analysis and what one group makes of it, and half a kilobyte for each further group.
 */
const FORGET_AFTER = 100_000;

/** Creates a vetter that uses the word table. Throws `InputError` if the word table does not exist yet. */
export function createVetter(
  { groups, words }: Pick<VetterSettings, 'groups' | 'words'>,
  engine = loadEngine(),
): Vetter {
  let known = 0;
  let reporters = makeReporters();

  function makeReporters(): { reportOn: ReturnType<typeof createReporter>; climber: Climber }[] {
    const analyzer = rememberWeighed(engine, () => {
      known++;
    });
    return groups.map(({ group, sequence }) => ({
      reportOn: createReporter(createJudge(analyzer, compileGroup(group, sequence)), { words }),
      climber: createClimber(analyzer, group, sequence),
    }));
  }

  function vetText(text: string): GroupReport[] {
    const counts = expectWords(countWords(text));
    if (known > FORGET_AFTER) {
      reporters = makeReporters();
      known = 0;
    }
    return groups.map(({ group, sequence }, n) => {
      const { reportOn, climber } = reporters[n]!;
      const report = reportOn(counts);
      const climb = climbText(counts, climber);
      return {
        group: group.name,
        sequence: sequence?.id ?? null,
        step: group.step,
        tally: { ...report.tally, reach: shareOf(report.tally) },
        reaches95: shareOf(report.tally) === null ? null : climb.withHelp,
        reaches99: shareOf(report.tally) === null ? null : climb.alone,
        gaps: report.gaps.map(({ pattern, opens, words }) => ({
          pattern,
          label: describePattern(pattern),
          opens,
          words,
        })),
        ...(words ? { words: report.words } : {}),
      };
    });
  }

  async function vetFile({ path, error }: FoundText): Promise<TextRecord> {
    if (error !== null) return { text: path, error };
    try {
      const { title, text } = await openText(path, readBytes(path), () => engine);
      return { text: path, title, reports: vetText(text) };
    } catch (error) {
      return { text: path, error: explainFault(error, path) };
    }
  }

  return { vetFile, vetText };
}
