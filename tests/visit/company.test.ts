import { expect, test } from 'vitest';
import { Company } from '@/lib/visit/company';
import { logoLimits } from '@/lib/visit/logo-limits';
import { pngSize } from '@/lib/visit/png-size';
import { readVisit } from '@/lib/visit/read-visit';
import { demoFiles } from '../appraise/demo-files';

/** Head of a PNG of a size: signature, length and name of the first chunk, width, height. */
function png(widthPx: number, heightPx: number): string {
  const head = Buffer.alloc(33);
  head.set([137, 80, 78, 71, 13, 10, 26, 10, 0, 0, 0, 13]);
  head.write('IHDR', 12, 'latin1');
  head.writeUInt32BE(widthPx, 16);
  head.writeUInt32BE(heightPx, 20);
  return `data:image/png;base64,${head.toString('base64')}`;
}

test('identity: the size of a picture is read from its head; anything else has none', () => {
  expect(pngSize(png(320, 96))).toEqual({ widthPx: 320, heightPx: 96 });
  expect(pngSize(png(70_000, 1))).toEqual({ widthPx: 70_000, heightPx: 1 });
  expect(pngSize('data:image/png;base64,/9j/4AAQSkZJRgABAQAAAQABAAD/2wBD')).toBeUndefined();
  expect(pngSize('data:image/png;base64,AA')).toBeUndefined();
});

test('identity: nothing of the company is required; each limit of the logo holds just on it and not beyond', () => {
  const ok = (company: object) => Company.safeParse(company).success;
  expect(ok({})).toBe(true);
  expect(ok({ logo: png(logoLimits.widthPx, logoLimits.heightPx) })).toBe(true);
  expect(ok({ logo: png(logoLimits.widthPx + 1, 10) })).toBe(false);
  expect(ok({ logo: png(10, logoLimits.heightPx + 1) })).toBe(false);
  expect(ok({ logo: png(0, 10) })).toBe(false);
  expect(ok({ logo: png(10, 10).replace('image/png', 'image/svg+xml') })).toBe(false);
  expect(ok({ logo: `${png(10, 10)}${'A'.repeat(logoLimits.characters)}` })).toBe(false);
});

test('wiring: a colour too pale is refused in words that name colour, limit and remedy', () => {
  const [visit] = demoFiles;
  const reading = readVisit({ ...visit, company: { ...visit?.company, accent: '#ffd700' } });
  expect(reading).toMatchObject({
    ok: false,
    issues: [{ code: 'notAllowed', path: 'company.accent', label: 'Company colour', value: '#ffd700' }],
  });
  expect(Company.safeParse({ accent: '#14506e' }).success).toBe(true);
  expect(Company.safeParse({ accent: 'red' }).success).toBe(false);
});
