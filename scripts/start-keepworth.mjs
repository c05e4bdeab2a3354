import path from 'node:path';
import { buildIfNeeded } from './bootstrap-build.mjs';
import { installIfNeeded } from './bootstrap-install.mjs';
import { ROOT, run } from './bootstrap-run.mjs';

const USAGE = 'Usage: npm start [-- --port <number>]   (or KEEPWORTH_PORT; data folder: KEEPWORTH_DATA)';

const FIRST_PORT = 3000;

/** Everything between `npm start` and the address on the screen. */
export async function startKeepworth() {
  const tell = (/** @type {string} */ line) => console.log(line);
  const args = process.argv.slice(2);
  if (args.includes('--help') || args.includes('-h')) {
    tell(USAGE);
    return;
  }
  const port = wantedPort(args, process.env);
  if (typeof port === 'string') {
    console.error(`${port}\n${USAGE}`);
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
 * @returns {number | string} the port to try first, or what is wrong in a sentence
 */
export function wantedPort(args, env) {
  const [first, second, ...rest] = args;
  const split = first === '--port';
  const joined = first?.startsWith('--port=');
  const extra = split ? rest[0] : joined ? second : first;
  if (extra !== undefined) return `There is no option "${extra}".`;
  const given = split
    ? (second ?? '')
    : joined
      ? first?.slice('--port='.length)
      : (env.KEEPWORTH_PORT ?? env.PORT);
  if (given === undefined) return FIRST_PORT;
  const port = Number(given);
  const isPort = /^\d+$/.test(given) && port >= 1 && port <= 65535;
  return isPort ? port : `The port must be a whole number from 1 to 65535, not "${given}".`;
}
