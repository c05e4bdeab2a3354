import { type ChildProcess, spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { TestProject } from 'vitest/node';

declare module 'vitest' {
  // Merging is the one way to tell vitest what `inject` gives.
  export interface ProvidedContext {
    /** Where the app answers, for example "http://127.0.0.1:41234". */
    address: string;
    /** The data folder the app keeps its visits in; fresh, with the demo loaded. */
    dataFolder: string;
  }
}

/** A build may be needed first. */
const READY_MS = 400_000;

/**
 * Starts the app as its users do, `npm start`'s own script, on a free port with a data folder of its own; stops it as
 * they do, by an interrupt, and insists that it ends cleanly.
 */
export default async function serveApp(project: TestProject): Promise<() => Promise<void>> {
  const dataFolder = mkdtempSync(path.join(tmpdir(), 'keepworth-e2e-'));
  const server = spawn(process.execPath, ['scripts/start.mjs'], {
    env: { ...process.env, KEEPWORTH_DATA: dataFolder, KEEPWORTH_PORT: String(await freePort()) },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const output = gather(server);
  const address = await addressOf(server, output);
  project.provide('address', address);
  project.provide('dataFolder', dataFolder);
  return async () => {
    const ended = once(server, 'close');
    server.kill('SIGINT');
    const [code] = await ended;
    rmSync(dataFolder, { recursive: true, force: true });
    if (code !== 0) throw new Error(`the server ended with ${code} after an interrupt:\n${output.text}`);
    const errors = output.errors.filter((line) => /error|unhandled|⨯/i.test(line));
    if (errors.length > 0) throw new Error(`the server wrote errors:\n${errors.join('\n')}`);
  };
}

type Output = { text: string; errors: string[] };

function gather(server: ChildProcess): Output {
  const output: Output = { text: '', errors: [] };
  server.stdout?.on('data', (chunk) => {
    output.text += String(chunk);
  });
  server.stderr?.on('data', (chunk) => {
    output.text += String(chunk);
    output.errors.push(...String(chunk).split('\n'));
  });
  return output;
}

async function addressOf(server: ChildProcess, output: Output): Promise<string> {
  for (let waited = 0; waited < READY_MS; waited += 100) {
    const found = /Keepworth is ready: (http:\S+)/.exec(output.text)?.[1];
    if (found !== undefined) {
      // What the build said is no trouble of the server.
      output.errors.length = 0;
      return found;
    }
    if (server.exitCode !== null) break;
    await new Promise((resolve) => setTimeout(resolve, 100));
  }
  server.kill('SIGKILL');
  throw new Error(`the app did not start:\n${output.text}`);
}

function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.on('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const address = probe.address();
      const port = typeof address === 'object' && address !== null ? address.port : 0;
      probe.close(() => resolve(port));
    });
  });
}
