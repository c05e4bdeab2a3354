import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { ROOT, run } from './bootstrap-run.mjs';

const STAMP = 'node_modules/.keepworth-install.json';

/**
 * Installs the packages of package-lock.json when they are not there as locked.
 *
 * @param {(line: string) => void} tell
 * @returns {Promise<boolean>} whether the packages are there
 */
export async function installIfNeeded(tell) {
  const reason = installReason(ROOT);
  if (reason === '') return true;
  tell(`Installing packages: ${reason}. This takes a minute or two.`);
  // Run by npm, use that very npm; else the one on the path.
  const npm = process.env.npm_execpath;
  const args = ['ci', '--include=dev', '--no-audit', '--no-fund'];
  const code = npm?.endsWith('.js')
    ? await run('node', [npm, ...args], { output: 'toErrors' })
    : await run('npm', args, { output: 'toErrors' });
  if (code !== 0) {
    tell(
      `"npm ci" failed (exit code ${code}). Check the network and the messages above, then try again. ` +
        'better-sqlite3 is compiled where no ready-made one fits: that needs python3, make and g++.',
    );
    return false;
  }
  writeFileSync(path.join(ROOT, STAMP), JSON.stringify(platform()));
  return true;
}

/**
 * Why packages must be installed; empty when they need not be. Contents are compared, not dates: a fresh checkout makes
 * every file look new.
 *
 * @param {string} root
 */
export function installReason(root) {
  const locked = packagesOf(path.join(root, 'package-lock.json'));
  const installed = packagesOf(path.join(root, 'node_modules/.package-lock.json'));
  if (installed === undefined) return 'none are installed yet';
  const wrong = Object.entries(locked ?? {}).filter(
    ([place, entry]) =>
      place !== '' &&
      installed[place]?.version !== entry.version &&
      // Left out on other systems; but never of another version.
      !(entry.optional && installed[place] === undefined),
  );
  if (wrong.length > 0) {
    const names = wrong.slice(0, 3).map(([place]) => place.replace(/^.*node_modules\//, ''));
    return `${wrong.length} not as in package-lock.json (${names.join(', ')}${wrong.length > 3 ? ', ...' : ''})`;
  }
  const stamp = path.join(root, STAMP);
  if (existsSync(stamp) && readFileSync(stamp, 'utf8') !== JSON.stringify(platform())) {
    return 'they were made for another Node.js or another system';
  }
  return '';
}

/**
 * @param {string} file
 * @returns {Record<string, { version?: string, optional?: boolean }> | undefined}
 */
function packagesOf(file) {
  try {
    return JSON.parse(readFileSync(file, 'utf8')).packages;
  } catch {
    return undefined;
  }
}

/** What compiled packages depend on. */
function platform() {
  return { abi: process.versions.modules, platform: process.platform, arch: process.arch };
}
