import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { fieldBook } from '@/components/draft/build-field-book';
import type { Draft } from '@/components/draft/draft-tree';
import { visitDigest } from '@/components/list/visit-digest';

const demo = (name: string) => JSON.parse(readFileSync(`data-demo/${name}.json`, 'utf8')) as Draft;

test('wiring: a digest says what is advised and which causes stand as likely', () => {
  const digest = visitDigest(demo('restricted-orifice'), fieldBook());
  expect(digest.headline).toMatch(/\$/);
  expect(['unsafe', 'repair', 'replace', 'open']).toContain(digest.advice);
  expect(digest.causes).toContain('meteringRestriction');
});

test('wiring: an unfinished visit says so, and one that left out an entry counts it', () => {
  expect(visitDigest({}, fieldBook())).toMatchObject({ advice: 'unfinished', causes: [] });
  const broken = { ...demo('healthy'), tariff: { kind: 'flat', energyUsdPerKwh: 'cheap' } };
  expect(visitDigest(broken, fieldBook()).headline).toMatch(/1 entry is left out\.$/);
});
