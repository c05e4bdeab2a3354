import { createServer, get } from 'node:http';
import next from 'next';

/** Nobody outside this machine can reach it; listening elsewhere needs accounts first. */
const HOST = '127.0.0.1';

/** After so many taken ports something else is wrong. */
const MAX_PORTS = 20;

/** How long open requests may take to end after Ctrl+C. */
const CLOSE_MS = 3_000;

/**
 * Serves the built app until the program is interrupted.
 *
 * @param {{ port: number, tell: (line: string) => void }} options port: the first to try
 * @returns {Promise<string>} the address, once it answers
 */
export async function serve({ port, tell }) {
  /** @type {(request: import('node:http').IncomingMessage, response: import('node:http').ServerResponse) => void} */
  let handle = (_, response) => {
    response.writeHead(503, { 'retry-after': '1' }).end();
  };
  const server = createServer((request, response) => {
    if (isForThisMachine(request.headers.host)) handle(request, response);
    else response.writeHead(421, { 'content-type': 'text/plain' }).end('This address is not served here.\n');
  });
  const bound = await listen(server, port, tell);
  Object.assign(process.env, { NODE_ENV: 'production', NEXT_TELEMETRY_DISABLED: '1' });
  const app = next({ dev: false, hostname: HOST, port: bound });
  closeOnSignal(server, app);
  await app.prepare();
  handle = app.getRequestHandler();
  const address = `http://${HOST}:${bound}`;
  const status = await statusOf(address);
  if (status >= 500) {
    console.error(
      `The app started but its first page failed (status ${status}); the messages above say why.`,
    );
    process.exit(1);
  }
  return address;
}

/**
 * A page of some other site can make a browser resolve its own name to this machine and then read what is kept here.
 * Its requests carry that name, so only names of this machine are answered.
 *
 * @param {string | undefined} host
 */
function isForThisMachine(host) {
  return /^(127\.0\.0\.1|localhost|\[::1\])(:\d+)?$/i.test(host ?? '');
}

/**
 * @param {import('node:http').Server} server
 * @param {number} first
 * @param {(line: string) => void} tell
 * @returns {Promise<number>} the port it listens on
 */
async function listen(server, first, tell) {
  for (let port = first; port < first + MAX_PORTS && port <= 65535; port++) {
    const problem = await tryPort(server, port);
    if (problem === undefined) return port;
    tell(
      problem === 'EADDRINUSE'
        ? `Port ${port} is taken by another program; trying ${port + 1}.`
        : `Port ${port} cannot be used (${problem}); trying ${port + 1}.`,
    );
  }
  console.error(`No free port from ${first} on. Give one: npm start -- --port 4000`);
  return process.exit(1);
}

/**
 * @param {import('node:http').Server} server
 * @param {number} port
 * @returns {Promise<string | undefined>} the error's code, undefined when it listens
 */
function tryPort(server, port) {
  return new Promise((resolve) => {
    const failed = (/** @type {NodeJS.ErrnoException} */ error) => resolve(error.code ?? error.message);
    server.once('error', failed);
    server.listen(port, HOST, () => {
      server.off('error', failed);
      resolve(undefined);
    });
  });
}

/**
 * @param {import('node:http').Server} server
 * @param {{ close: () => Promise<void> }} app
 */
function closeOnSignal(server, app) {
  let closing = false;
  const close = () => {
    if (closing) return;
    closing = true;
    console.log('\nStopping.');
    setTimeout(() => server.closeAllConnections(), CLOSE_MS).unref();
    server.close(async () => {
      // Interrupted while still starting, there is nothing to close yet.
      await app.close().catch(() => {});
      process.exit(0);
    });
    server.closeIdleConnections();
  };
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) process.on(signal, close);
}

/**
 * @param {string} address
 * @returns {Promise<number>}
 */
function statusOf(address) {
  return new Promise((resolve, reject) => {
    get(address, (response) => {
      response.resume();
      response.on('end', () => resolve(response.statusCode ?? 0));
    }).on('error', reject);
  });
}
