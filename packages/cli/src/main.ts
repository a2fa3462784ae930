import { chartCommand } from './commands/chart.ts';
import { checkCommand } from './commands/check.ts';
import { drawingCommand } from './commands/drawing.ts';
import { listingCommand } from './commands/listing.ts';
import { measureCommand } from './commands/measure.ts';
import { pinplanCommand } from './commands/pinplan.ts';
import { schemaCommand } from './commands/schema.ts';
import { shaftsCommand } from './commands/shafts.ts';
import { sheetCommand } from './commands/sheet.ts';
import { exitCodes, UsageError } from './exit.ts';
import { generalHelp } from './help.ts';

const commands: Readonly<Record<string, (words: readonly string[]) => Promise<number> | number>> = {
  check: checkCommand,
  measure: measureCommand,
  shafts: shaftsCommand,
  sheet: sheetCommand,
  drawing: drawingCommand,
  pinplan: pinplanCommand,
  listing: listingCommand,
  chart: chartCommand,
  schema: schemaCommand,
};

async function run(words: readonly string[]): Promise<number> {
  const [name, ...rest] = words;
  if (name === undefined || name === '--help' || name === '-h' || name === 'help') {
    process.stdout.write(generalHelp);
    return name === undefined ? exitCodes.badInput : 0;
  }
  const command = Object.hasOwn(commands, name) ? commands[name] : undefined;
  if (command === undefined)
    throw new UsageError(`There is no command “${name.slice(0, 40)}”. Try: ${Object.keys(commands).join(', ')}.`);
  if (rest.includes('--help') || rest.includes('-h')) {
    process.stdout.write(generalHelp);
    return 0;
  }
  return command(rest);
}

// A reader that has seen enough closes the pipe: that is no fault.
process.stdout.on('error', (problem: NodeJS.ErrnoException) => {
  if (problem.code !== 'EPIPE') throw problem;
  process.exit();
});

try {
  process.exitCode = await run(process.argv.slice(2));
} catch (problem) {
  process.exitCode = problem instanceof UsageError ? exitCodes.badInput : exitCodes.internalFault;
  const text = problem instanceof Error ? problem.message : String(problem);
  process.stderr.write(problem instanceof UsageError ? `${text}\n` : `Internal fault, please report it: ${text}\n`);
}
