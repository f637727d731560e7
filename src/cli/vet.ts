import { VET_USAGE } from './read-vet-options.ts';
import { runCommand } from './run-command.ts';
import { vetCommand } from './vet-command.ts';

await runCommand(VET_USAGE, () => vetCommand(process.argv.slice(2)));
