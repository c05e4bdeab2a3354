import { expect, test } from 'vitest';
import { switchedClimate } from '@/components/energy/climate-draft';

const own = {
  kind: 'own',
  bins: [
    { outdoorF: 30, yearHours: 2920 },
    { outdoorF: 55, yearHours: 2920 },
    { outdoorF: 80, yearHours: 2920 },
  ],
  calendarCity: 'duluth-mn',
};

test('regression: an own table of hours left for a region and asked for again is there as it was', () => {
  const region = switchedClimate('bins', { site: { climate: own, town: 'Rush' } }, 'region', 'IV');
  expect(region).toEqual({ site: { climate: { kind: 'region', region: 'IV' }, town: 'Rush' } });
  const unknown = switchedClimate('bins', region, '', '');
  expect(unknown).toEqual({ site: { town: 'Rush' } });
  expect(switchedClimate('bins', unknown, 'own', '')).toEqual({ site: { climate: own, town: 'Rush' } });
});

test('wiring: without an own table the weather chosen before stays, and no visit gets the table of another', () => {
  const city = { site: { climate: { kind: 'city', city: 'atlanta-ga' } } };
  switchedClimate('one', { site: { climate: own } }, 'city', 'atlanta-ga');
  expect(switchedClimate('other', city, 'own', '')).toEqual(city);
});
