import { expect, test } from 'vitest';
import { fitChangePoint } from '@/lib/energy/bills/change-point-fit';
import { type ChangePointFit, expectedKwhPerDay } from '@/lib/energy/bills/change-point-model';
import { fitLine } from '@/lib/energy/bills/fit-line';

const points = [20, 30, 40, 50, 60, 62, 64, 70, 80, 90].map((meanF) => ({
  meanF,
  kwhPerDay: 20 + 1.5 * Math.max(0, 60 - meanF) + 1 * Math.max(0, meanF - 65),
}));

function fitted(): ChangePointFit {
  const fit = fitChangePoint(points, '5P');
  if (fit === undefined) throw new Error('no fit');
  return fit;
}

test('identity: straight from corner to corner the line is the fit, everywhere between', () => {
  const fit = fitted();
  const line = fitLine(fit, 20, 90);
  expect(line.map(({ meanF }) => meanF)).toEqual([20, fit.heatingChangeF, fit.coolingChangeF, 90]);
  const misses = line.slice(1).map((to, i) => {
    const from = line[i] ?? to;
    const middle = expectedKwhPerDay(fit, (from.meanF + to.meanF) / 2);
    return Math.abs(middle - (from.kwhPerDay + to.kwhPerDay) / 2);
  });
  expect(Math.max(...misses)).toBeLessThan(1e-9);
});

test('wiring: change points outside the ends are no corners', () => {
  expect(fitLine(fitted(), 70, 90).map(({ meanF }) => meanF)).toEqual([70, 90]);
  expect(fitLine(fitted(), 20, 50).map(({ meanF }) => meanF)).toEqual([20, 50]);
});
