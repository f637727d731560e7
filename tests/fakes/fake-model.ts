import type { AskModel } from '../../src/rewrite/rewrite-task.ts';

/** Creates a model that gives the answers one after the other and then repeats the last. `asked` collects the questions. */
export function fakeModel(...answers: string[]): { ask: AskModel; asked: Record<string, unknown>[] } {
  const asked: Record<string, unknown>[] = [];
  return {
    asked,
    ask: async (text) => {
      asked.push(JSON.parse(text));
      return answers[Math.min(asked.length, answers.length) - 1]!;
    },
  };
}
