import { interpolateLinear } from '../../lib/math/interpolate';
import anchors from './data/class-anchors.json';
import constants from './data/cycle-constants.json';

/** Constants of the simulator; value, unit, source and status of each stand in the data file. */
export const compressorConstants = constants.compressor;
export const coilConstants = constants.coil;
export const meteringConstants = constants.metering;
export const chargeConstants = constants.charge;
export const fanConstants = constants.fans;
export const ratingPoint = constants.rating;

type Anchor =
  | 'condensingOverAmbientFd'
  | 'evaporatingF'
  | 'outdoorCfmPerTon'
  | 'eerBtuPerWh'
  | 'heatingEvaporatingBelowOutdoorFd'
  | 'heatingCondensingAboveReturnFd';

/** Value of a healthy unit of an efficiency class; linear between classes, held outside 8-18 SEER. */
export function anchorOfClass(anchor: Anchor, seer: number): number {
  return interpolateLinear(anchors.seer, anchors[anchor].values, seer).value;
}
