#!/usr/bin/env node
import { InputError, runCommand } from './run-command.ts';

/** The commands of the package `wordreach`, each with its file. */
const COMMANDS: Readonly<Record<string, () => Promise<unknown>>> = {
  vet: () => import('./vet.ts'),
  word: () => import('./word.ts'),
  patterns: () => import('./patterns.ts'),
  swap: () => import('./swap.ts'),
};
const usage = `Usage: wordreach ${Object.keys(COMMANDS).join('|')} …`;

// The command name is removed from the arguments, so that a command finds its own arguments in the same place as when
// npm calls it.
const [name = ''] = process.argv.splice(2, 1);
if (Object.hasOwn(COMMANDS, name)) {
  process.env.WORDREACH_PACKAGE = 'yes';
  await COMMANDS[name]!();
} else {
  await runCommand(usage, () => {
    if (name === '--help') return `${usage}\n\n\`wordreach vet --help\` says how texts are vetted.`;
    throw new InputError(`${name ? `There is no command "${name}".` : 'No command given.'}\n${usage}`);
  });
}
