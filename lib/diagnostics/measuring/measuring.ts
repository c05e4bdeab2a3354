import type { Basis } from '../../visit/basis';
import type { Verdict } from '../verdict';

/** Points of a grille traverse as one sees them while walking over the face. */
export type Traverse = {
  readonly pointCount: number;
  readonly meanFpm: number;
  /** Standard deviation of the points; absent with one point. */
  readonly spreadFpm?: number;
  readonly spreadFrac?: number;
  readonly lowestFpm: number;
  readonly highestFpm: number;
  readonly uneven: boolean;
  /** Above what a filter grille is made for. */
  readonly fast: boolean;
};

/** What a grille traverse stands on, with or without points yet. */
export type GrilleMeasuring = {
  readonly advisedCount: number;
  readonly areaIn2?: number;
  readonly freeAreaFrac: number;
  readonly freeAreaSdFrac: number;
  readonly freeAreaBasis: Basis;
  readonly freeAreaSource?: string;
  readonly traverse?: Traverse;
  /** A mean was typed as well; the points count. */
  readonly meanIgnored: boolean;
};

/** Airflow by one method, per ton, against what is healthy per ton. */
export type MethodAirflow = {
  readonly id: 'airflowDirectCfm' | 'airflowGrilleCfm' | 'airflowHeatRiseCfm';
  readonly cfm: number;
  readonly sdCfm: number;
  readonly cfmPerTon: number;
  readonly sdCfmPerTon: number;
  /** Healthy per ton. */
  readonly low: number;
  readonly high: number;
  readonly verdict: Verdict;
};

/** Heat and rise of the electric-heat airflow test. */
export type HeatRise = {
  readonly heatKw: number;
  readonly riseFd: number;
  /** 1.08 at the site's altitude. */
  readonly sensibleBtuhPerCfmFd: number;
  readonly blowerCounted: boolean;
  readonly doubt?: 'noRise' | 'smallRise';
};

export type StaticPartId = 'returnSide' | 'returnDucts' | 'filter' | 'coil' | 'supplyDucts' | 'supplySide';

/** One user of the static pressure. */
export type StaticPart = {
  readonly id: StaticPartId;
  readonly inWc: number;
  readonly sdInWc: number;
  /** Of the total; absent without a total. */
  readonly shareFrac?: number;
  /** What is usual; absent where nobody says. */
  readonly usualInWc?: { readonly low: number; readonly high: number };
  readonly verdict?: Verdict;
  readonly source?: string;
};

/** Who uses how much of the static pressure the blower can give. */
export type StaticBudget = {
  /** In the order the air passes them. */
  readonly parts: readonly StaticPart[];
  readonly totalInWc?: number;
  readonly totalSdInWc?: number;
  readonly limitInWc: number;
  readonly limitFrom: 'nameplate' | 'common';
  /** Total over what blowers are rated at or the plate allows. */
  readonly verdict?: 'within' | 'overRated' | 'overLimit';
  /** What is accepted in the field when the plate says nothing. */
  readonly acceptedInWc: number;
  readonly largest?: StaticPartId;
  /** Measured, but not among the parts since nobody said between which ports it lies. */
  readonly coilApart?: StaticPart;
  readonly doubt?: 'coilUnplaced' | 'filterBeyondReturn' | 'coilBeyondReturn' | 'coilBeyondSupply';
};

/** A run capacitor against its label. */
export type CapacitorCheck = {
  readonly which: 'compressor' | 'fan';
  readonly labelUf: number;
  readonly measuredUf: number;
  readonly deviationFrac: number;
  readonly tightFrac: number;
  readonly wideFrac: number;
  /** `low` and `high`: outside the tight label class, inside the wide one. */
  readonly verdict: 'within' | 'low' | 'weak' | 'high' | 'strong';
};

/** Amps of the electric heat against its kilowatts. */
export type StripCheck = {
  readonly nominalA: number;
  readonly volts: number;
  readonly voltsMeasured: boolean;
  readonly measuredA?: number;
  readonly ratioToNominal?: number;
  readonly verdict?: Verdict;
  readonly elementCount?: number;
  readonly ampsPerElementA?: number;
  /** Elements that carry current, where the amps say so clearly. */
  readonly carryingCount?: number;
};

/** What the measuring screens show of one run; a part without readings is absent. */
export type RunMeasuring = {
  readonly airflows: readonly MethodAirflow[];
  readonly grille: GrilleMeasuring;
  readonly heatRise?: HeatRise;
  readonly statics?: StaticBudget;
  readonly capacitors: readonly CapacitorCheck[];
  readonly strips?: StripCheck;
};
