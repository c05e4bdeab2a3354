import { t, tCode } from '@/components/words/words';
import type { RunFindings, Target } from '@/lib/diagnostics/findings';
import type {
  CapacitorCheck,
  GrilleMeasuring,
  HeatRise,
  MethodAirflow,
  RunMeasuring,
  StripCheck,
} from '@/lib/diagnostics/measuring/measuring';
import { wordsOf } from '@/lib/sheet/phrase';
import { quantityRangeWords, quantityWords } from '@/lib/sheet/reading-words';
import { roundToRange } from '@/lib/sheet/round-to-range';
import type { Run } from '@/lib/visit/run';
import type { Saying } from '@/lib/visit/wording';
import { staticsView } from './build-statics-view';
import type {
  CheckView,
  GrilleView,
  HeatRiseView,
  Line,
  MeasureView,
  MethodView,
  TableTargetView,
} from './view';

const words = wordsOf('en');
const said = (value: number, unit: string) => quantityWords(words, value, unit);
const plain = (value: number, digits: number) =>
  new Intl.NumberFormat('en-US', { maximumFractionDigits: digits, minimumFractionDigits: digits }).format(
    value,
  );

/** What the measuring screens say about a run; numbers come from the findings. */
export function measureView(run: Run, found: RunFindings, told: (saying: Saying) => string): MeasureView {
  const measuring = found.measuring;
  const methods = new Map(measuring?.airflows.map((method) => [method.id, method]) ?? []);
  const of = (id: MethodAirflow['id'], worked?: string) => {
    const method = methods.get(id);
    return method === undefined ? undefined : methodView(method, worked);
  };
  const direct = of('airflowDirectCfm');
  const heatRise = measuring?.heatRise;
  return {
    ...(direct === undefined ? {} : { direct }),
    grille: grilleView(measuring?.grille, of('airflowGrilleCfm', workedGrille(run, measuring))),
    ...(heatRise === undefined
      ? {}
      : { heatRise: heatRiseView(heatRise, of('airflowHeatRiseCfm', workedRise(heatRise))) }),
    ...(measuring?.statics === undefined ? {} : { statics: staticsView(measuring.statics) }),
    capacitors: measuring?.capacitors.map(capacitorView) ?? [],
    ...(measuring?.strips === undefined ? {} : { strips: stripView(measuring.strips) }),
    table: tableTargets(found, told),
  };
}

function methodView(method: MethodAirflow, worked: string | undefined): MethodView {
  const { cfm, sdCfm, cfmPerTon, sdCfmPerTon } = method;
  const rounded = roundToRange({ low: cfm - sdCfm, likely: cfm, high: cfm + sdCfm }, 1);
  const perTon = roundToRange(
    { low: cfmPerTon - sdCfmPerTon, likely: cfmPerTon, high: cfmPerTon + sdCfmPerTon },
    1,
  );
  const value = said(rounded.likely, 'cfm');
  const perTonWords = t('measure.perTon', { n: plain(perTon.likely, 0) });
  return {
    value,
    perTon: perTonWords,
    doubt: t('measure.giveOrTake', { sd: said(Math.round(sdCfm / 5) * 5, 'cfm') }),
    verdict: t('measure.verdictOf', {
      verdict: t(`verdict.${method.verdict}`),
      range: quantityRangeWords(words, method.low, method.high, 'cfm/ton'),
    }),
    off: method.verdict !== 'within',
    ...(worked === undefined ? {} : { worked }),
    line: t('measure.airflowLine', { value, perTon: perTonWords, verdict: t(`verdict.${method.verdict}`) }),
  };
}

function workedGrille(run: Run, measuring: RunMeasuring | undefined): string | undefined {
  const fpm = measuring?.grille.traverse?.meanFpm ?? run.grilleFaceFpm;
  const area = measuring?.grille.areaIn2;
  if (measuring === undefined || fpm === undefined || area === undefined) return undefined;
  return t('measure.grille.worked', {
    fpm: said(fpm, 'fpm'),
    area: said(area, 'in2'),
    factor: plain(measuring.grille.freeAreaFrac, 2),
  });
}

function workedRise(rise: HeatRise): string {
  return t('measure.rise.worked', {
    kw: plain(rise.heatKw, 2),
    factor: plain(rise.sensibleBtuhPerCfmFd, 2),
    rise: said(rise.riseFd, 'Fd'),
  });
}

function grilleView(grille: GrilleMeasuring | undefined, result: MethodView | undefined): GrilleView {
  if (grille === undefined) return { advised: '', factor: '', lines: [], notes: [] };
  const { traverse } = grille;
  const lines: Line[] =
    traverse === undefined
      ? []
      : [
          {
            name: t('measure.grille.points'),
            value: t('measure.grille.ofAdvised', { n: traverse.pointCount, advised: grille.advisedCount }),
          },
          { name: t('measure.grille.mean'), value: said(traverse.meanFpm, 'fpm') },
          ...(traverse.spreadFpm === undefined
            ? []
            : [
                {
                  name: t('measure.grille.spread'),
                  value: t('measure.grille.spreadOf', {
                    low: plain(traverse.lowestFpm, 0),
                    high: said(traverse.highestFpm, 'fpm'),
                    sd: said(traverse.spreadFpm, 'fpm'),
                  }),
                },
              ]),
        ];
  return {
    advised: t('measure.grille.advised', { n: grille.advisedCount }),
    factor: t(
      grille.freeAreaBasis === 'assumed' ? 'measure.grille.factorAssumed' : 'measure.grille.factorTyped',
      {
        factor: plain(grille.freeAreaFrac, 2),
        sd: plain(grille.freeAreaSdFrac, 2),
        source: grille.freeAreaSource ?? '',
      },
    ),
    lines: [
      ...lines,
      ...(grille.areaIn2 === undefined
        ? []
        : [{ name: t('measure.grille.area'), value: said(grille.areaIn2, 'in2') }]),
    ],
    notes: [
      ...(traverse !== undefined && traverse.pointCount < grille.advisedCount
        ? [t('measure.grille.few')]
        : []),
      ...(traverse?.uneven === true ? [t('measure.grille.uneven')] : []),
      ...(traverse?.fast === true ? [t('measure.grille.fast')] : []),
      ...(grille.meanIgnored ? [t('measure.grille.meanIgnored')] : []),
      ...(traverse !== undefined && grille.areaIn2 === undefined ? [t('measure.grille.needsArea')] : []),
    ],
    ...(result === undefined ? {} : { result }),
  };
}

function heatRiseView(rise: HeatRise, result: MethodView | undefined): HeatRiseView {
  return {
    lines: [
      { name: t('measure.rise.heat'), value: t('measure.rise.kw', { kw: plain(rise.heatKw, 1) }) },
      { name: t('measure.rise.rise'), value: said(rise.riseFd, 'Fd') },
    ],
    notes: [
      ...(rise.doubt === undefined ? [] : [tCode(`measure.rise.${rise.doubt}`)]),
      ...(rise.blowerCounted ? [] : [t('measure.rise.blowerUnread')]),
    ],
    ...(result === undefined ? {} : { result }),
  };
}

function capacitorView(check: CapacitorCheck): CheckView {
  const percent = (frac: number) => `${frac > 0 ? '+' : ''}${said(frac, 'frac')}`;
  const within = (frac: number) =>
    quantityRangeWords(words, check.labelUf * (1 - frac), check.labelUf * (1 + frac), 'uF');
  const name = tCode(`measure.cap.${check.which}`);
  return {
    name,
    lines: [
      { name: t('measure.cap.label'), value: said(check.labelUf, 'uF') },
      {
        name: t('measure.cap.measured'),
        value: t('measure.cap.ofLabel', {
          value: said(check.measuredUf, 'uF'),
          percent: percent(check.deviationFrac),
        }),
      },
      {
        name: t('measure.cap.tight', { percent: said(check.tightFrac, 'frac') }),
        value: within(check.tightFrac),
      },
      {
        name: t('measure.cap.wide', { percent: said(check.wideFrac, 'frac') }),
        value: within(check.wideFrac),
      },
    ],
    verdict: tCode(`measure.cap.says.${check.verdict}`),
    off: check.verdict !== 'within',
    line: t('measure.cap.line', { name, percent: percent(check.deviationFrac) }),
  };
}

function stripView(check: StripCheck): CheckView {
  const nominal = said(check.nominalA, 'A');
  const volts = said(check.volts, 'V');
  const lines: Line[] = [
    {
      name: t('measure.strip.nominal'),
      value: t(check.voltsMeasured ? 'measure.strip.atVolts' : 'measure.strip.atAssumedVolts', {
        amps: nominal,
        volts,
      }),
    },
    ...(check.ampsPerElementA === undefined
      ? []
      : [{ name: t('measure.strip.each'), value: said(check.ampsPerElementA, 'A') }]),
    ...(check.measuredA === undefined
      ? []
      : [
          {
            name: t('measure.strip.measured'),
            value: t('measure.strip.ofNominal', {
              amps: said(check.measuredA, 'A'),
              percent: said(check.ratioToNominal ?? 0, 'frac'),
            }),
          },
        ]),
  ];
  return {
    name: t('measure.strip.name'),
    lines,
    verdict: stripVerdict(check),
    off: check.verdict === 'below' || check.verdict === 'above',
    line:
      check.measuredA === undefined
        ? t('measure.strip.shouldDraw', { amps: nominal })
        : t('measure.strip.line', { amps: said(check.measuredA, 'A'), nominal }),
  };
}

function stripVerdict(check: StripCheck): string {
  if (check.verdict === undefined) return t('measure.strip.notRead');
  const { carryingCount, elementCount } = check;
  if (carryingCount !== undefined && elementCount !== undefined && carryingCount < elementCount) {
    return t('measure.strip.carrying', { n: carryingCount, of: elementCount });
  }
  return tCode(`measure.strip.says.${check.verdict}`);
}

const TABLE_PORTS = ['suctionPsig', 'dischargePsig'] as const;

function tableTargets(found: RunFindings, told: (saying: Saying) => string): TableTargetView[] {
  return TABLE_PORTS.flatMap((id): TableTargetView[] => {
    const name = tCode(`measure.table.port.${id}`);
    const target = found.targets.find((one) => one.id === id);
    if (target !== undefined) return [tableTargetView(name, target, told)];
    const none = found.noTargets?.find((one) => one.id === id);
    return none === undefined ? [] : [{ name, off: false, note: told(none.note) }];
  });
}

function tableTargetView(name: string, target: Target, told: (saying: Saying) => string): TableTargetView {
  const { verdict, reading } = target;
  return {
    name,
    target: t('measure.table.target', {
      value: said(target.value, 'psig'),
      range: quantityRangeWords(words, target.low, target.high, 'psig'),
    }),
    ...(reading === undefined ? {} : { reading: said(reading, 'psig') }),
    ...(verdict === undefined ? {} : { verdict: t(`verdict.${verdict}`) }),
    off: verdict === 'above' || verdict === 'below',
    ...(target.note === undefined ? {} : { note: told(target.note) }),
  };
}
