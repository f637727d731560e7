import { patternLabel } from '../marks/pattern-label.ts';
import { AS_FOUND, type VersionFigures } from './use-versions.ts';

interface VersionsTableProps {
  readonly versions: readonly VersionFigures[];
  /** The version that is worked on. */
  readonly groupId: string;
  /** Works on another. */
  readonly onOpen: (groupId: string) => void;
}

/** The versions of a passage side by side in figures: words, reach, and how often each practises its group's step. */
export function VersionsTable({ versions, groupId, onOpen }: VersionsTableProps) {
  return (
    <table class="versions">
      <thead>
        <tr>
          <th scope="col">Version</th>
          <th scope="col">Words</th>
          <th scope="col">Reach</th>
          <th scope="col">Practises this step</th>
        </tr>
      </thead>
      <tbody>
        {versions.map((version) => (
          <tr key={version.id}>
            <th scope="row">
              {version.id === AS_FOUND || version.id === groupId ? (
                version.name
              ) : (
                <button type="button" class="plain" onClick={() => onOpen(version.id)}>
                  {version.name}
                </button>
              )}
            </th>
            <td>{version.words}</td>
            <td>{version.reach.toFixed(version.reach === 100 ? 0 : 1)}%</td>
            <td>
              <PracticeView {...version.practice} />
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

function PracticeView({ words, patterns }: VersionFigures['practice']) {
  const practised = patterns.filter((pattern) => pattern.words > 0);
  const others = patterns.filter((pattern) => pattern.words === 0);
  if (patterns.length === 0) return <>nothing new is taught at this step</>;
  return (
    <>
      {sayWords(words)}
      {practised.length > 0 && (
        <ul class="practised">
          {practised.map(({ pattern, words }) => (
            <li key={pattern}>
              {patternLabel(pattern)}: {sayWords(words)}
            </li>
          ))}
        </ul>
      )}
      {others.length > 0 && (
        <p class="quiet">not: {others.map(({ pattern }) => patternLabel(pattern)).join('; ')}</p>
      )}
    </>
  );
}

function sayWords(count: number): string {
  return count === 1 ? '1 word' : `${count} words`;
}
