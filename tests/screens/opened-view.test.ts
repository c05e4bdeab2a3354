import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { answerView } from '@/components/appraisal/answer-view';
import type { AnswerView } from '@/components/appraisal/view';
import { appraise } from '@/lib/appraise/appraise';
import { composeSheet } from '@/lib/sheet/compose-sheet';
import { readVisit } from '@/lib/visit/read-visit';
import type { Visit } from '@/lib/visit/visit';

function answer(name: string, change: (visit: Visit) => Visit = (visit) => visit): AnswerView {
  const reading = readVisit(JSON.parse(readFileSync(`data-demo/${name}.json`, 'utf8')));
  if (!reading.ok) throw new Error(name);
  const appraisal = appraise(change(reading.value));
  return answerView(appraisal, composeSheet({ ...appraisal, locale: 'en' }));
}

describe('what a line of the findings opens to', () => {
  const orifice = answer('restricted-orifice');
  const [run] = orifice.runs;
  const derived = (id: string) => run?.derived.find((value) => value.id === id);

  test('wiring: a target opens to its rule, its conditions, its source with status, and plain words when off', () => {
    const discharge = run?.targets.find(({ id }) => id === 'dischargeLineF');
    expect(discharge?.verdict).toBe('above');
    expect(discharge?.plain).toBe('The compressor is running hotter than it should.');
    expect(discharge?.formula).toMatch(/^lossless compression/);
    expect(discharge?.conditions.map(({ name }) => name)).toContain('Outdoor air');
    expect(discharge?.source).toMatch(/\(computed\)$/);
  });

  test('wiring: a quantity no rule answers for says why', () => {
    expect(derived('suctionSuperheatFd')?.target).toBeUndefined();
    expect(derived('suctionSuperheatFd')?.noTarget).toMatch(/^No superheat rule is published for heating/);
  });

  test('wiring: a gauge reading shows the barometric pressure it rests on, and where that came from', () => {
    const from = (view: AnswerView) =>
      view.runs[0]?.derived
        .find(({ id }) => id === 'evaporatingF')
        ?.inputs.find(({ name }) => name === 'Barometric pressure');
    expect(from(orifice)).toMatchObject({ value: '14 psia', basis: 'from the altitude given' });
    const nowhere = answer('restricted-orifice', (visit) => {
      const { altitudeFt: _given, ...site } = visit.site;
      return { ...visit, site };
    });
    expect(from(nowhere)).toMatchObject({
      value: '14.7 psia',
      basis: 'as at sea level, altitude not given',
    });
  });

  test('wiring: no bare degrees, no code and no empty place in any opened line', () => {
    const texts = orifice.runs.flatMap((one) => JSON.stringify(one).match(/"(?:[^"\\]|\\.)*"/g) ?? []);
    expect(texts.length).toBeGreaterThan(300);
    expect(texts.filter((text) => /\d F\b|\{\w+\}|NaN|undefined/.test(text))).toEqual([]);
    expect(texts.filter((text) => /"(homeowner|note|flag|derived)\./.test(text))).toEqual([]);
  });

  test('wiring: the loss names its routes, what the correlation was held at, and what takes the efficiency', () => {
    const [loss] = orifice.losses;
    expect(loss?.routes.map(({ name }) => name)).toContain('Published effects of the suspected fault');
    expect(loss?.routes.flatMap(({ notes }) => notes).join(' ')).toMatch(/edge value is used/);
    expect(loss?.parts[0]?.name).toBe('Metering orifice restricted');
    expect(loss?.routes.find(({ name }) => name === 'Age of the unit')?.capacity).toBeUndefined();
    expect(answer('few-readings').losses[0]?.routes[0]?.capacity).toMatch(/^about/);
  });

  test('wiring: a refrigerant outside the list keeps the rest, and says what that is', () => {
    const other = answer('low-charge', (visit) => {
      const { refrigerant: _listed, ...unit } = visit.unit;
      return { ...visit, unit: { ...unit, otherRefrigerant: 'R-407A' } };
    });
    const ids = other.runs[0]?.derived.map(({ id }) => id) ?? [];
    expect(ids).toEqual(expect.arrayContaining(['airSplitFd', 'compressionRatio', 'airflowCfmPerTon']));
    expect(ids).not.toContain('suctionSuperheatFd');
    const unknown = other.flags.filter(({ severity }) => severity === 'unknown').map(({ words }) => words);
    expect(unknown.join(' ')).toMatch(/R-407A is not among the refrigerants/);
  });
});
