import { patternName } from '../../ui/pattern-name.ts';
import { patternNames } from '../../ui/pattern-names.ts';
import { say, spokenLanguage } from '../../wording/say.ts';
import { sayDecimal } from './say-decimal.ts';
import { AS_FOUND, type VersionFigures } from './use-versions.ts';

interface VersionsTableProps {
  readonly versions: readonly VersionFigures[];
  /** The group whose version is open. */
  readonly groupId: string;
  /** Opens the version of another group. */
  readonly onOpen: (groupId: string) => void;
}

/**
 * Compares the versions of a passage in figures: words, reach, and how often each version practises the step of its
 * group.
 */
export function VersionsTable({ versions, groupId, onOpen }: VersionsTableProps) {
  return (
    <table class="versions">
      <thead>
        <tr>
          <th scope="col">{say('desk.version')}</th>
          <th scope="col">{say('desk.words')}</th>
          <th scope="col">{say('desk.reach')}</th>
          <th scope="col">{say('desk.practisesThisStep')}</th>
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
            <td>{version.words.toLocaleString(spokenLanguage())}</td>
            <td>
              {say('desk.percent', { percent: sayDecimal(version.reach, version.reach === 100 ? 0 : 1) })}
            </td>
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
  if (patterns.length === 0) return <>{say('desk.nothingNew')}</>;
  return (
    <>
      {say('desk.countWords', { count: words })}
      {practised.length > 0 && (
        <ul class="practised">
          {practised.map(({ pattern, words }) => (
            <li key={pattern}>{say('desk.practises', { pattern: patternName(pattern), count: words })}</li>
          ))}
        </ul>
      )}
      {others.length > 0 && (
        <p class="quiet">
          {say('desk.notPractised', {
            patterns: patternNames(others.map(({ pattern }) => pattern)),
          })}
        </p>
      )}
    </>
  );
}
