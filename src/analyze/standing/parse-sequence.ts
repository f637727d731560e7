import type { Sequence, SequenceStep } from '../types.ts';
import { GroupError } from './group-error.ts';
import { readAccent, readFields, readPatterns, readText, readWords } from './read-fields.ts';

const keys = ['$schema', 'id', 'name', 'source', 'licence', 'note', 'accent', 'steps'];
const stepKeys = ['title', 'teaches', 'bySight'];

/**
 * Checks the content of a sequence file (profiles/README.md has the format). A pattern may be taught only once, so that
 * every pattern has one step. Throws `GroupError` with the path in the file.
 */
export function parseSequence(value: unknown): Sequence {
  const fields = readFields(value, '', keys);
  const steps = fields.get('steps');
  if (!Array.isArray(steps) || steps.length === 0) {
    throw new GroupError('steps', 'should be a list [ … ] with at least one step.');
  }
  const accent = readAccent(fields);
  const sequence = {
    id: readText(fields, 'id'),
    name: readText(fields, 'name'),
    source: readText(fields, 'source'),
    licence: readText(fields, 'licence'),
    ...(fields.has('note') ? { note: readText(fields, 'note') } : {}),
    ...(accent && { accent }),
    steps: steps.map((step: unknown, i) => readStep(step, `steps[${i}]`)),
  };
  refuseRepeats(sequence.steps);
  return sequence;
}

function readStep(value: unknown, path: string): SequenceStep {
  const fields = readFields(value, path, stepKeys);
  return {
    ...(fields.has('title') ? { title: readText(fields, 'title', path) } : {}),
    teaches: readPatterns(fields, 'teaches', path),
    bySight: readWords(fields, 'bySight', path),
  };
}

function refuseRepeats(steps: readonly SequenceStep[]): void {
  const firstStep = new Map<string, number>();
  steps.forEach((step, s) => {
    step.teaches.forEach((id, i) => {
      const before = firstStep.get(id);
      if (before !== undefined) {
        throw new GroupError(`steps[${s}].teaches[${i}]`, `"${id}" is taught in steps[${before}] already.`);
      }
      firstStep.set(id, s);
    });
  });
}
