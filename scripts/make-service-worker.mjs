import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { ROOT } from './bootstrap-run.mjs';

/** Where the app's route finds it. */
const OUT = '.next/service-worker.js';

/** Only for whoever reads the code. */
const NOT_NEEDED = /\.map$/;

/** Makes the worker that lets the built app go on without a signal; after every build, since it names what was built. */
export async function makeServiceWorker() {
  // Not there before the packages are installed.
  const { build } = await import('esbuild');
  await build({
    absWorkingDir: ROOT,
    entryPoints: ['components/offline/worker/service-worker.ts'],
    outfile: OUT,
    bundle: true,
    minify: true,
    format: 'iife',
    target: 'es2022',
    logLevel: 'warning',
    define: {
      KEEPWORTH_BUILD: JSON.stringify(readFileSync(path.join(ROOT, '.next/BUILD_ID'), 'utf8').trim()),
      KEEPWORTH_ASSETS: JSON.stringify(['/icon.svg', ...builtFiles()]),
    },
  });
}

/** Addresses of everything built for the browser. */
function builtFiles() {
  const folder = path.join(ROOT, '.next/static');
  return readdirSync(folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && !NOT_NEEDED.test(entry.name))
    .map((entry) => path.relative(folder, path.join(entry.parentPath, entry.name)))
    .map((file) => `/_next/static/${file.split(path.sep).map(encodeURIComponent).join('/')}`)
    .sort();
}
