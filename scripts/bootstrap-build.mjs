import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { ROOT, run } from './bootstrap-run.mjs';
import { makeServiceWorker } from './make-service-worker.mjs';

/** Everything the build reads. */
const SOURCES = [
  'app',
  'components',
  'lib',
  'public',
  'types',
  'proxy.ts',
  'instrumentation.ts',
  'next.config.ts',
  'postcss.config.mjs',
  'tsconfig.json',
  'package.json',
  'package-lock.json',
  'scripts/make-service-worker.mjs',
];

const STAMP = '.next/keepworth-build.json';

/**
 * Builds the web app when its sources differ from those of the last build.
 *
 * @param {(line: string) => void} tell
 * @returns {Promise<boolean>} whether a build of these sources is there
 */
export async function buildIfNeeded(tell) {
  const hash = sourceHash(ROOT);
  if (existsSync(path.join(ROOT, '.next/BUILD_ID')) && builtHash(ROOT) === hash) return true;
  tell('Building the web app. This takes about a minute.');
  const code = await run('node', ['node_modules/next/dist/bin/next', 'build'], { output: 'toErrors' });
  if (code !== 0) {
    tell(`The build failed (exit code ${code}); the messages above say where.`);
    return false;
  }
  await makeServiceWorker();
  writeFileSync(path.join(ROOT, STAMP), JSON.stringify({ hash }));
  return true;
}

/**
 * Hash of names and contents of everything the build reads.
 *
 * @param {string} root
 */
export function sourceHash(root) {
  const hash = createHash('sha256');
  hash.update(process.versions.node);
  for (const file of SOURCES.flatMap((source) => filesUnder(root, source)).sort()) {
    const content = readFileSync(path.join(root, file));
    hash.update(`${file}\0${content.length}\0`).update(content);
  }
  return hash.digest('hex');
}

/**
 * @param {string} root
 * @param {string} relative
 * @returns {string[]}
 */
function filesUnder(root, relative) {
  const full = path.join(root, relative);
  if (!existsSync(full)) return [];
  if (!statSync(full).isDirectory()) return [relative];
  return readdirSync(full).flatMap((name) => filesUnder(root, `${relative}/${name}`));
}

/** @param {string} root */
function builtHash(root) {
  try {
    return JSON.parse(readFileSync(path.join(root, STAMP), 'utf8')).hash;
  } catch {
    return undefined;
  }
}
