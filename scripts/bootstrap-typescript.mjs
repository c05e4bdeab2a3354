import { installIfNeeded } from './bootstrap-install.mjs';
import { run } from './bootstrap-run.mjs';

/**
 * Installs what is missing, then runs a TypeScript program of this folder; its exit code becomes this one's. React runs
 * as it does in the served app: its checks for developers take a third of the time of a PDF.
 *
 * @param {string} script file name in scripts/
 * @param {readonly string[]} args
 * @param {Readonly<Record<string, string>>} [env]
 */
export async function runTypeScript(script, args, env = {}) {
  const installed = await installIfNeeded((line) => console.error(line));
  process.exitCode = installed
    ? await run('node', ['--import', 'tsx', `scripts/${script}`, ...args], {
        env: { ...env, NODE_ENV: 'production' },
      })
    : 1;
}
