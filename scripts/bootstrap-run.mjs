import { spawn } from 'node:child_process';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

/** Folder of package.json. */
export const ROOT = path.resolve(path.dirname(fileURLToPath(import.meta.url)), '..');

/**
 * Runs a program in the project's folder and waits for its end.
 *
 * @param {string} command program, or `node` for this very Node
 * @param {readonly string[]} args
 * @param {{ env?: Readonly<Record<string, string>>, output?: 'all' | 'errors' | 'toErrors' | 'none', cwd?: string }} [options]
 *   output: where the program writes - as usual, only its errors, everything to standard error, nowhere
 * @returns {Promise<number>} exit code; 127 when the program is not there, 130 when it was interrupted
 */
export function run(command, args, options = {}) {
  const { env = {}, output = 'all', cwd = ROOT } = options;
  /** @type {Record<string, import('node:child_process').StdioOptions>} */
  const outputs = {
    all: ['inherit', 'inherit', 'inherit'],
    errors: ['inherit', 'ignore', 'inherit'],
    toErrors: ['inherit', 2, 2],
    none: ['ignore', 'ignore', 'ignore'],
  };
  return new Promise((resolve) => {
    const program = command === 'node' ? process.execPath : command;
    const child = spawn(program, args, { cwd, env: childEnv(env), stdio: outputs[output] ?? 'inherit' });
    // A terminal sends Ctrl+C to the child as well: wait for it to end.
    const wait = () => {};
    const pass = () => child.kill('SIGTERM');
    process.on('SIGINT', wait);
    process.on('SIGTERM', pass);
    const end = (/** @type {number} */ code) => {
      process.off('SIGINT', wait);
      process.off('SIGTERM', pass);
      resolve(code);
    };
    child.on('error', () => end(127));
    child.on('close', (code) => end(code ?? 130));
  });
}

/**
 * The environment for a program: no reports to anyone, and no NODE_ENV of the caller's, which would make npm leave out
 * what the build needs, or the build make something unfit.
 *
 * @param {Readonly<Record<string, string>>} [more]
 */
export function childEnv(more = {}) {
  const { NODE_ENV: _callers, ...inherited } = process.env;
  const kept = { ...inherited, NEXT_TELEMETRY_DISABLED: '1', ...more };
  return /** @type {NodeJS.ProcessEnv} */ (/** @type {unknown} */ (kept));
}
