import { accessSync, constants, existsSync } from 'node:fs';
import path from 'node:path';
import { run } from './bootstrap-run.mjs';

/** Programs of the system that only the tests need. */
export const TEST_TOOLS = [
  {
    what: 'Chromium (browser tests)',
    programs: ['chromium', 'chromium-browser', 'google-chrome', 'google-chrome-stable'],
    variable: 'KEEPWORTH_CHROMIUM',
    package: 'chromium',
  },
  {
    what: 'pdftotext (reading the sheet back)',
    programs: ['pdftotext'],
    variable: 'KEEPWORTH_PDFTOTEXT',
    package: 'poppler-utils',
  },
  {
    what: 'pdftoppm (seeing the sheet as a picture)',
    programs: ['pdftoppm'],
    variable: 'KEEPWORTH_PDFTOPPM',
    package: 'poppler-utils',
  },
];

/**
 * Finds the tools, installing Debian's packages when some are missing and this user may.
 *
 * @param {(line: string) => void} tell
 * @returns {Promise<Record<string, string> | undefined>} path of each tool by its variable; undefined when some are missing
 */
export async function ensureTestTools(tell) {
  const missing = TEST_TOOLS.filter((tool) => toolPath(tool) === undefined);
  const packages = [...new Set(missing.map((tool) => tool.package))];
  if (packages.length > 0) {
    const names = missing.map((tool) => tool.what).join(', ');
    const prefix = await administratorPrefix();
    const byHand = `Missing: ${names}. Install with: sudo apt-get install ${packages.join(' ')}`;
    if (prefix === undefined) {
      tell(`${byHand} (on other systems: the packages of that name), then run "npm test" again.`);
      return undefined;
    }
    tell(`Installing Debian packages: ${packages.join(' ')}.`);
    await installPackages(prefix, packages);
    if (missing.some((tool) => toolPath(tool) === undefined)) {
      tell(`The installation failed. ${byHand}, then run "npm test" again.`);
      return undefined;
    }
  }
  return Object.fromEntries(TEST_TOOLS.map((tool) => [tool.variable, toolPath(tool) ?? '']));
}

/**
 * @param {readonly string[]} prefix
 * @param {readonly string[]} packages
 */
async function installPackages(prefix, packages) {
  const apt = (/** @type {readonly string[]} */ args) => {
    const [command = '', ...rest] = [...prefix, 'apt-get', '-qq', ...args];
    return run(command, rest, { output: 'toErrors', env: { DEBIAN_FRONTEND: 'noninteractive' } });
  };
  const install = ['install', '-y', '--no-install-recommends', ...packages];
  // The lists on the machine may be missing or too old: fetch them and try once more.
  if ((await apt(install)) !== 0 && (await apt(['update'])) === 0) await apt(install);
}

/** What to put before apt-get so that it may install: nothing for root, sudo where it asks no password. */
async function administratorPrefix() {
  if (findProgram('apt-get') === undefined) return undefined;
  if (process.getuid?.() === 0) return [];
  const sudo =
    findProgram('sudo') !== undefined && (await run('sudo', ['-n', 'true'], { output: 'none' })) === 0;
  return sudo ? ['sudo', '-n'] : undefined;
}

/** @param {{ variable: string, programs: readonly string[] }} tool */
function toolPath(tool) {
  const named = process.env[tool.variable];
  if (named !== undefined && existsSync(named)) return named;
  return tool.programs.map(findProgram).find((found) => found !== undefined);
}

/**
 * @param {string} name
 * @returns {string | undefined} full path of the program on the PATH
 */
export function findProgram(name) {
  return (process.env.PATH ?? '')
    .split(path.delimiter)
    .map((folder) => path.join(folder, name))
    .find((file) => {
      try {
        accessSync(file, constants.X_OK);
        return true;
      } catch {
        return false;
      }
    });
}
