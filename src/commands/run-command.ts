/** What all commands share: help, exit codes, and no stack trace for what a user can mend. */

/** A mistake in how a command was called or what it needs: shown as one sentence. */
export class UsageError extends Error {}

/** Runs a command with the arguments of this process and sets the exit code that it returns. */
export async function runCommand(help: string, command: (args: string[]) => Promise<number>): Promise<void> {
  const args = process.argv.slice(2);
  if (args.includes('--help') || args.includes('-h')) {
    console.log(help);
    return;
  }
  try {
    process.exitCode = await command(args);
  } catch (error) {
    if (!(error instanceof UsageError) && !isArgumentError(error)) throw error;
    console.error(`${error.message}\n\n${help}`);
    process.exitCode = 2;
  }
}

const isArgumentError = (error: unknown): error is Error =>
  error instanceof Error && 'code' in error && typeof error.code === 'string' && error.code.startsWith('ERR_PARSE_ARGS');
