import type { AssumptionKey } from '../visit/assumption-keys';
import type { ReadingName, Run } from '../visit/run';
import type { Site } from '../visit/site';
import type { Visit } from '../visit/visit';
import { asSourced, derive } from './derive';
import type { DerivedValue } from './findings';
import type { HealthyUnit } from './healthy-unit/healthy-unit';
import { wetBulbF } from './moist-air';
import { baroPsiaAtAltitude } from './refrigerant/gauge';
import type { RefrigerantProperties } from './refrigerant/refrigerant-properties';
import { allowance, assumed, readingOf, type Sourced } from './sourced';

/** Everything a computation on one run may look at. */
export type RunContext = {
  readonly run: Run;
  readonly visit: Visit;
  readonly healthy: HealthyUnit;
  /** Absent when the refrigerant is unknown. */
  readonly properties?: RefrigerantProperties;
  readonly altitude: Sourced;
};

/**
 * Context of one run.
 *
 * @param args  visit, run, healthy unit, refrigerant properties if the refrigerant is known
 * Check: tests/diagnostics/run-context.test.ts
 */
export function runContext(args: {
  readonly visit: Visit;
  readonly run: Run;
  readonly healthy: HealthyUnit;
  readonly properties?: RefrigerantProperties | undefined;
}): RunContext {
  const { visit, run, healthy, properties } = args;
  return {
    run,
    visit,
    healthy,
    altitude: siteAltitude(visit.site),
    ...(properties === undefined ? {} : { properties }),
  };
}

/**
 * A computation on a context kept with it, so that whoever asks again gets the same answer for nothing.
 *
 * @param work  pure: looks at nothing but the context, which never changes
 * Check: tests/diagnostics/run-context.test.ts
 */
export function oncePerContext<T extends object | undefined>(
  work: (context: RunContext) => T,
): (context: RunContext) => T {
  const known = new WeakMap<RunContext, { readonly answer: T }>();
  return (context) => {
    const already = known.get(context);
    if (already !== undefined) return already.answer;
    const answer = work(context);
    known.set(context, { answer });
    return answer;
  };
}

/** Altitude of the site; not given, it is taken as sea level with a wide uncertainty. */
export function siteAltitude(site: Site): Sourced {
  if (site.altitudeFt === undefined) return allowance('altitudeFt');
  return { name: 'altitudeFt', value: site.altitudeFt, sd: 0, unit: 'ft', basis: 'measured' };
}

/** A reading of the context's run. */
export function reading(context: RunContext, name: ReadingName): Sourced | undefined {
  return readingOf(context.run, name, context.visit.assumptions);
}

/** An assumption of the context's visit. */
export function assumption(context: RunContext, key: AssumptionKey): Sourced {
  return assumed(context.visit.assumptions, key);
}

/**
 * Return wet bulb: as read, else from dry bulb and relative humidity.
 *
 * @returns undefined when neither is there
 * Check: tests/diagnostics/run-context.test.ts
 */
export function returnWetBulb(context: RunContext): Sourced | undefined {
  return reading(context, 'returnWetBulbF') ?? asSourced(wetBulbFromHumidity(context));
}

/** Return wet bulb computed from dry bulb and relative humidity. */
export const wetBulbFromHumidity = oncePerContext((context): DerivedValue | undefined =>
  derive({
    id: 'returnWetBulbF',
    unit: 'F',
    formula: 'wet bulb of return air = f(dry bulb, relative humidity, barometric pressure)',
    source: 'psychrolib (ASHRAE Fundamentals ch. 1), status read',
    inputs: {
      dry: reading(context, 'returnAirF'),
      humidity: reading(context, 'returnHumidityFrac'),
      altitude: context.altitude,
    },
    compute: ({ dry, humidity, altitude }) => wetBulbF(dry, humidity, baroPsiaAtAltitude(altitude)),
  }),
);
