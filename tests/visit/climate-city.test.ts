import { expect, it } from 'vitest';
import { cities } from '@/lib/energy/city-list';
import { climateFor } from '@/lib/energy/climate';
import { climateCities, findClimateCity } from '@/lib/visit/climate-city';
import { readDraft, readVisit } from '@/lib/visit/read-visit';
import { bareVisit } from './visit-fixture';

const inCity = (city: string) => ({ ...bareVisit(), site: { climate: { kind: 'city', city } } });

it('wiring: the cities a visit may name are those with a typical year', () => {
  expect(climateCities).toHaveLength(29);
  expect(climateCities).toEqual(cities.map(({ slug, city, state }) => ({ slug, city, state })));
});

it('property: every listed city is read and found, by slug and by name', () => {
  const texts = climateCities.flatMap((c) => [c.slug, `${c.city}, ${c.state}`]);
  expect(texts).toHaveLength(58);
  expect(texts.filter((text) => !readVisit(inCity(text)).ok)).toEqual([]);
  expect(climateCities.filter((c) => findClimateCity(c.slug)?.slug !== c.slug)).toEqual([]);
});

it.each(['atlantis', 'Portland ME', '-', 'constructor'])(
  'wiring: a city without a typical year is refused by name: %s',
  (city) => {
    const result = readVisit(inCity(city));
    expect(result).toEqual({
      ok: false,
      issues: [
        {
          code: 'notAllowed',
          path: 'site.climate.city',
          label: 'Climate city',
          value: city,
          limit: 'one of the 29 listed cities',
          fix: expect.stringMatching(
            /^Choose a listed city .*for example atlanta-ga, .*The visit form lists every city/,
          ),
        },
      ],
    });
  },
);

it('wiring: a draft with an unknown city drops the climate alone, and the stand-in says so', () => {
  const draft = { ...bareVisit(), site: { stateCode: 'TN', climate: { kind: 'city', city: 'atlantis' } } };
  const { visit, issues } = readDraft(draft);
  expect(issues.map((i) => [i.code, i.path])).toEqual([['notAllowed', 'site.climate.city']]);
  expect(visit?.site).toEqual({ stateCode: 'TN' });
  const climate = climateFor(visit?.site.climate, visit?.site.stateCode);
  expect([climate.basis, climate.notes.map((n) => n.code)]).toEqual(['assumed', ['climateByState']]);
});
