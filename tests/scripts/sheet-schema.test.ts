import { readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { appraise } from '@/lib/appraise/appraise';
import { appraisalSchema, schemaFiles, schemaText } from '../../scripts/sheet-schema';
import { demoFiles } from '../appraise/demo-files';

const root = path.resolve(import.meta.dirname, '../..');

describe('the published schemas', () => {
  test.each(schemaFiles)(
    'wiring: %s is what zod and the types say today (else: npm run schemas)',
    (file, make) => {
      expect(readFileSync(path.join(root, file), 'utf8')).toBe(schemaText(make()));
    },
  );

  const schema = z.fromJSONSchema(appraisalSchema() as Parameters<typeof z.fromJSONSchema>[0]);

  test.each(demoFiles.map((visit) => [visit.id, visit] as const))(
    'wiring: the appraisal of %s keeps to its schema, as a file would hold it',
    (_, visit) => {
      const file: unknown = JSON.parse(JSON.stringify(appraise(visit)));
      expect(schema.safeParse(file).error?.issues.slice(0, 3)).toBeUndefined();
    },
  );

  test('identity: what does not keep to it is refused', () => {
    const [visit] = demoFiles;
    if (visit === undefined) throw new Error('no demo visit');
    const good = JSON.parse(JSON.stringify(appraise(visit))) as ReturnType<typeof appraise>;
    const { comparison: _comparison, ...lacking } = good;
    expect(schema.safeParse(lacking).success).toBe(false);
    expect(schema.safeParse({ ...good, modelVersion: 1 }).success).toBe(false);
    const broken = { ...good, comparison: { ...good.comparison, timing: 'never' } };
    expect(schema.safeParse(broken).success).toBe(false);
  });
});
