import { diagnose } from '../lib/diagnostics/diagnose';
import { healthyUnit } from '../lib/diagnostics/healthy-unit/healthy-unit';
import { refrigerantProperties } from '../lib/diagnostics/refrigerant/properties';
import type { Visit } from '../lib/visit/visit';
import { confusionTable, type Judged, shareWithin } from '../tests/diagnostics/causes/confusion';
import { judgedPatterns } from '../tests/diagnostics/causes/drawn-patterns';
import { LEAST_EFFECT_FRAC, withoutOwnTests } from '../tests/diagnostics/causes/simulated-faults';
import { judgedSimulations, simulatedSingles } from '../tests/diagnostics/causes/single-faults-judged';
import { durationText, timeCalls } from './bench-timing';

type Grouped = Judged & { readonly group: string };

/** Accuracy by group, confusion tables, and what does not count, as lines to print. */
export type CausesBench = {
  readonly accuracy: string[][];
  readonly confusion: readonly { readonly title: string; readonly text: string }[];
  readonly unfelt: readonly string[];
};

/** Single faults: simulated units (held-out units, weather and seeds) and the published patterns with noise. */
export function benchCauses(): CausesBench {
  const cases = simulatedSingles();
  const all = judgedSimulations(cases);
  const felt = all.filter((one) => one.felt);
  const plain = judgedSimulations(withoutOwnTests(cases)).filter((one) => one.felt);
  const patterns = judgedPatterns(1);
  return {
    accuracy: [
      ...rows('simulated', felt),
      row('simulated', 'all, standing and valve test not taken', plain),
      row('simulated', `all, with those below ${100 * LEAST_EFFECT_FRAC} % effect`, all),
      ...rows('published', patterns),
    ],
    confusion: [
      { title: 'Simulated units: true cause, and what was put first', text: confusionTable(felt) },
      { title: 'Published patterns: true cause, and what was put first', text: confusionTable(patterns) },
    ],
    unfelt: all.filter((one) => !one.felt).map(({ name }) => name),
  };
}

function rows(path: string, cases: readonly Grouped[]): string[][] {
  const groups = [...new Set(cases.map(({ group }) => group))].sort();
  return [
    ...groups.map((group) =>
      row(
        path,
        group,
        cases.filter((one) => one.group === group),
      ),
    ),
    row(path, 'all', cases),
  ];
}

function row(path: string, group: string, cases: readonly Judged[]): string[] {
  const percent = (count: number): string => `${(100 * shareWithin(cases, count)).toFixed(1)} %`;
  return [path, group, String(cases.length), percent(1), percent(2)];
}

/** Time of a diagnosis of four runs, against that of one run: the ratio hardly depends on the machine. */
export function benchDiagnosis(): string[][] {
  const cases = simulatedSingles().filter(({ group }) => group === 'txv cooling');
  const visits = cases.map(({ visit }, i): Visit => {
    const next = cases[(i + 1) % cases.length]?.visit ?? visit;
    const runs = [...visit.runs, ...next.runs, ...visit.runs, ...next.runs];
    return { ...visit, runs: runs.map((run, k) => ({ ...run, id: `run-${k}` })) };
  });
  const one = timeCalls((i) => diagnosed(cases[i % cases.length]?.visit));
  const four = timeCalls((i) => diagnosed(visits[i % visits.length]));
  return [
    ['one run', durationText(one.nsPerCall), '1.00 x'],
    ['four runs', durationText(four.nsPerCall), `${(four.nsPerCall / one.nsPerCall).toFixed(2)} x`],
  ];
}

function diagnosed(visit: Visit | undefined): number {
  if (visit?.unit.refrigerant === undefined) return Number.NaN;
  const healthy = healthyUnit({ unit: visit.unit, visitDate: visit.visitDate });
  const properties = refrigerantProperties(visit.unit.refrigerant);
  return diagnose({ visit, healthy, properties }).causes?.causes.length ?? Number.NaN;
}
