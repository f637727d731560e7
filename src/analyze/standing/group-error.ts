/**
 * An error for a group or sequence file that cannot be used. `path` is the place in the file (`options.schwa`,
 * `steps[3].teaches[0]`, empty for the whole file). `message` is one sentence that starts with the path.
 */
export class GroupError extends Error {
  override readonly name = 'GroupError';
  readonly path: string;

  constructor(path: string, problem: string) {
    super(path === '' ? problem : `${path}: ${problem}`);
    this.path = path;
  }
}
