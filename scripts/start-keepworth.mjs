import path from 'node:path';
import { buildIfNeeded } from './bootstrap-build.mjs';
import { installIfNeeded } from './bootstrap-install.mjs';
import { ROOT, run } from './bootstrap-run.mjs';

const USAGE = 'Usage: npm start [-- --port <number>]   (or KEEPWORTH_PORT; data folder: KEEPWORTH_DATA)';

const FIRST_PORT = 3000;

/** Everything between `npm start` and the address on the screen. */
export async function startKeepworth() {
  const tell = (/** @type {string} */ line) => console.log(line);
  const port = wantedPort(process.argv.slice(2), process.env);
  if (port === undefined) {
    console.error(`The port must be a whole number from 1 to 65535.\n${USAGE}`);
    process.exit(2);
  }
  const data = path.resolve(process.env.KEEPWORTH_DATA?.trim() || path.join(ROOT, 'data'));
  process.chdir(ROOT);
  process.env.KEEPWORTH_DATA = data;
  if (!(await installIfNeeded(tell))) process.exit(1);
  if (!(await buildIfNeeded(tell))) process.exit(1);
  if ((await run('node', ['--import', 'tsx', 'scripts/bootstrap-data.ts'])) !== 0) process.exit(1);
  const { serve } = await import('./start-server.mjs');
  const address = await serve({ port, tell });
  tell(`Keepworth is ready: ${address}   (stop with Ctrl+C; data in ${data})`);
}

/**
 * @param {readonly string[]} args
 * @param {Readonly<Record<string, string | undefined>>} env
 * @returns {number | undefined} the port to try first, undefined when what was given is none
 */
export function wantedPort(args, env) {
  const joined = args.find((arg) => arg.startsWith('--port='))?.slice('--port='.length);
  const flag = args.indexOf('--port');
  const given = joined ?? (flag === -1 ? (env.KEEPWORTH_PORT ?? env.PORT) : args[flag + 1]);
  if (given === undefined && flag === -1) return FIRST_PORT;
  const port = Number(given);
  return /^\d+$/.test(given ?? '') && port >= 1 && port <= 65535 ? port : undefined;
}
