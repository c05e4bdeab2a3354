import { spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { onTestFinished } from 'vitest';

export const ROOT = path.resolve(import.meta.dirname, '../..');

export type Ran = { readonly code: number | null; readonly out: string; readonly err: string };

/** Runs one of the commands as a user would, and gives what it wrote and its exit code. */
export function runScript(script: string, args: readonly string[], cwd = ROOT): Promise<Ran> {
  // As typed in a shell, not under npm, which adds variables of its own.
  const env = Object.fromEntries(
    Object.entries(process.env).filter(([name]) => !/^(npm_|INIT_CWD)/i.test(name)),
  ) as NodeJS.ProcessEnv;
  const child = spawn(process.execPath, [path.join(ROOT, 'scripts', script), ...args], {
    cwd,
    env,
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  let out = '';
  let err = '';
  child.stdout.on('data', (chunk) => {
    out += String(chunk);
  });
  child.stderr.on('data', (chunk) => {
    err += String(chunk);
  });
  return new Promise((resolve) => child.on('close', (code) => resolve({ code, out, err })));
}

/** A folder of its own for one test, removed when the test ends. */
export function temporaryFolder(): string {
  const folder = mkdtempSync(path.join(tmpdir(), 'keepworth-scripts-'));
  onTestFinished(() => rmSync(folder, { recursive: true, force: true }));
  return folder;
}
