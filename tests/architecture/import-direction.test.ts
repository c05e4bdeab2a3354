import { execFileSync } from 'node:child_process';
import { createRequire } from 'node:module';
import path from 'node:path';
import { expect, test } from 'vitest';

const ROOT = path.resolve(import.meta.dirname, '../..');
const BREACH = path.join(import.meta.dirname, 'breach');
const CONFIG = path.join(ROOT, '.dependency-cruiser.cjs');

type Violation = { rule: { name: string; severity: string }; from: string; to: string };
type Report = { summary: { violations: Violation[]; totalCruised: number } };

/** Stages in their order, written here a second time on purpose. */
const STAGES = ['math', 'visit', 'diagnostics', 'energy', 'finance', 'sheet', 'appraise'];

/** What the breach tree must be caught at: rule and file, each once. */
const EXPECTED = [
  // Told once, at the file read first.
  ['no-cycles', 'lib/math/cycle-a.ts'],
  ['resolvable', 'lib/math/unresolvable.ts'],
  ['lib-is-the-bottom', 'lib/math/takes-app.ts'],
  ['lib-is-the-bottom', 'lib/store/takes-components.ts'],
  ['lib-is-the-bottom', 'lib/sheet/takes-scripts.ts'],
  ['components-below-app', 'components/takes-app.ts'],
  ['components-below-app', 'components/takes-scripts.ts'],
  ['components-no-store', 'components/takes-store.ts'],
  ['pure-no-framework', 'lib/math/takes-react.ts'],
  ['pure-no-framework', 'lib/visit/takes-react-dom.ts'],
  ['pure-no-framework', 'lib/diagnostics/takes-next.ts'],
  ['pure-no-framework', 'lib/sheet/takes-react-pdf.ts'],
  ['pure-no-framework', 'lib/finance/takes-kysely.ts'],
  ['pure-no-framework', 'lib/energy/takes-better-sqlite3.ts'],
  ['pure-no-node', 'lib/energy/takes-node.ts'],
  ['pure-no-node', 'lib/appraise/takes-node.ts'],
  ['pure-no-store', 'lib/appraise/takes-store.ts'],
  ['pure-no-store', 'lib/math/takes-store.ts'],
  ...STAGES.flatMap((stage, i) =>
    [...new Set([STAGES[i + 1], 'appraise'])]
      .filter((other) => other !== undefined && other !== stage)
      .map((other) => [`stage-${stage}`, `lib/${stage}/takes-${other}.ts`]),
  ),
];

function cruise(cwd: string, folders: readonly string[]): Report['summary'] {
  const program = path.join(ROOT, 'node_modules/dependency-cruiser/bin/dependency-cruise.mjs');
  const args = [program, '--config', CONFIG, '--output-type', 'json', ...folders];
  const report = execFileSync(process.execPath, args, { cwd, encoding: 'utf8', maxBuffer: 64_000_000 });
  return (JSON.parse(report) as Report).summary;
}

test('wiring: every import rule bites, on type-only imports too, and nothing else is caught', () => {
  const { violations } = cruise(BREACH, ['app', 'components', 'lib', 'scripts']);
  const found = violations.map(({ rule, from }) => `${rule.name}: ${from}`);
  expect(found.sort()).toEqual(EXPECTED.map(([rule, from]) => `${rule}: ${from}`).sort());
  expect(EXPECTED).toHaveLength(29);
  // A warning breaks nothing.
  expect(violations.filter(({ rule }) => rule.severity !== 'error')).toEqual([]);
});

test('wiring: every rule of the configuration has its breach', () => {
  const { forbidden } = createRequire(import.meta.url)(CONFIG) as { forbidden: { name: string }[] };
  const breached = new Set(EXPECTED.map(([rule]) => rule));
  // The last stage has nothing to its right.
  expect(forbidden.map(({ name }) => name).filter((name) => !breached.has(name))).toEqual(['stage-appraise']);
});

test('wiring: the breach tree is read whole', () => {
  const { totalCruised } = cruise(BREACH, ['app', 'components', 'lib', 'scripts']);
  expect(totalCruised).toBeGreaterThan(EXPECTED.length);
});
