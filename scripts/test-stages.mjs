import { mkdirSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { buildIfNeeded } from './bootstrap-build.mjs';
import { installIfNeeded } from './bootstrap-install.mjs';
import { ROOT, run } from './bootstrap-run.mjs';
import { ensureTestTools } from './bootstrap-tools.mjs';

/**
 * @typedef {{ passed: number, failed: number }} Count
 * @typedef {{ ok: boolean, count?: Count }} Outcome
 * @typedef {{ name: string, what: string, run: (env: Record<string, string>) => Promise<Outcome> }} Stage
 */

/** @type {readonly Stage[]} */
const STAGES = [
  stage('lint', 'format and lint', () =>
    bin('@biomejs/biome/bin/biome', ['check', '--error-on-warnings', '.']),
  ),
  stage('types', 'types', async () => {
    const tsc = (/** @type {string[]} */ ...args) => bin('typescript/bin/tsc', ['--noEmit', ...args]);
    return (
      // Makes next-env.d.ts and the route types a fresh clone does not have.
      (await bin('next/dist/bin/next', ['typegen'], 'errors')) ||
      (await tsc()) ||
      (await tsc('-p', 'tsconfig.lib.json')) ||
      (await tsc('-p', 'tsconfig.worker.json')) ||
      (await tsc('-p', 'tsconfig.scripts.json'))
    );
  }),
  stage('imports', 'import direction', () =>
    bin('dependency-cruiser/bin/dependency-cruise.mjs', [
      '--config',
      '.dependency-cruiser.cjs',
      'app',
      'components',
      'lib',
      'scripts',
    ]),
  ),
  vitestStage('unit', 'unit and outside checks', 'vitest.config.ts'),
  { name: 'build', what: 'production build', run: async () => ({ ok: await buildIfNeeded(tell) }) },
  vitestStage('e2e', 'the app in a real browser', 'vitest.e2e.config.ts'),
];

/**
 * Runs the stages, prints what failed and, last, how many tests passed and failed.
 *
 * @param {readonly string[]} only names of stages; none means all
 */
export async function runStages(only) {
  const unknown = only.filter((name) => !STAGES.some((s) => s.name === name));
  if (unknown.length > 0) {
    console.error(
      `No such stage: ${unknown.join(', ')}. There are: ${STAGES.map((s) => s.name).join(', ')}.`,
    );
    process.exit(2);
  }
  process.chdir(ROOT);
  /** @type {Count} */
  const total = { passed: 0, failed: 0 };
  const failure = await firstFailure(only, total);
  if (failure !== undefined) tell(`FAILED: ${failure}`);
  console.log(closingLine(total, failure !== undefined));
  process.exitCode = failure === undefined ? 0 : 1;
}

/**
 * @param {Count} total
 * @param {boolean} failed whether a stage failed; one without tests of its own counts as one
 */
export function closingLine(total, failed) {
  return `${total.passed} passed, ${failed ? Math.max(1, total.failed) : total.failed} failed`;
}

/**
 * @param {readonly string[]} only
 * @param {Count} total added to
 * @returns {Promise<string | undefined>} what failed first
 */
async function firstFailure(only, total) {
  const chosen = STAGES.filter((s) => only.length === 0 || only.includes(s.name));
  if (!(await installIfNeeded(tell))) return 'installing packages';
  const needsTools = chosen.some((s) => s.name === 'unit' || s.name === 'e2e');
  const tools = needsTools ? await ensureTestTools(tell) : {};
  if (tools === undefined) return 'installing what the tests need';
  for (const [i, { name, what, run: check }] of chosen.entries()) {
    tell(`\n[${i + 1}/${chosen.length}] ${name}: ${what}`);
    const started = performance.now();
    const { ok, count } = await check(tools);
    total.passed += count?.passed ?? 0;
    total.failed += count?.failed ?? 0;
    if (!ok) return `${name} (${what}); run it alone with: npm test -- ${name}`;
    tell(`      ${name}: fine, ${((performance.now() - started) / 1000).toFixed(1)} s`);
  }
  return undefined;
}

/**
 * @param {string} name
 * @param {string} what
 * @param {() => Promise<number>} check exit code
 * @returns {Stage}
 */
function stage(name, what, check) {
  return { name, what, run: async () => ({ ok: (await check()) === 0 }) };
}

/**
 * @param {string} name
 * @param {string} what
 * @param {string} config
 * @returns {Stage}
 */
function vitestStage(name, what, config) {
  const report = path.join(ROOT, 'test-results', `${name}.json`);
  return {
    name,
    what,
    run: async (env) => {
      mkdirSync(path.dirname(report), { recursive: true });
      rmSync(report, { force: true });
      const args = [
        'run',
        '--config',
        config,
        '--reporter=default',
        '--reporter=json',
        `--outputFile.json=${report}`,
        '--allowOnly=false',
        // Both cores of a small machine; the browser tests run one file at a time all the same.
        '--maxWorkers=100%',
      ];
      const code = await run('node', ['node_modules/vitest/vitest.mjs', ...args], {
        env,
      });
      const count = countOf(report);
      if (count.skipped > 0) tell(`${count.skipped} tests were skipped: a skipped test proves nothing.`);
      return { ok: code === 0 && count.skipped === 0 && count.passed > 0, count };
    },
  };
}

/**
 * @param {string} report vitest's report in JSON
 * @returns {Count & { skipped: number }} zeros when there is none
 */
export function countOf(report) {
  try {
    const { numPassedTests, numFailedTests, numPendingTests, numTodoTests } = JSON.parse(
      readFileSync(report, 'utf8'),
    );
    return { passed: numPassedTests, failed: numFailedTests, skipped: numPendingTests + numTodoTests };
  } catch {
    return { passed: 0, failed: 0, skipped: 0 };
  }
}

/**
 * @param {string} file inside node_modules
 * @param {readonly string[]} args
 * @param {'all' | 'errors'} [output]
 */
function bin(file, args, output = 'all') {
  return run('node', [path.join('node_modules', file), ...args], { output });
}

/** @param {string} line */
function tell(line) {
  console.log(line);
}
