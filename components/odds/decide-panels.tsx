import type { AnswerView } from '@/components/appraisal/view';
import { DriversPanel } from './drivers-panel';
import { FindOutPanel } from './find-out-panel';
import { FlipMap } from './flip-map';
import { LaterPanel } from './later-panel';
import { RepairWorthPanel } from './repair-worth-panel';

/** What helps to decide beyond the totals; fetched when the reader comes near. */
export function DecidePanels(props: { readonly answer: AnswerView }) {
  const { drivers, repairs, later, investigate, flipMap } = props.answer;
  return (
    <div className="grid min-w-0 gap-8">
      {drivers === undefined ? null : <DriversPanel view={drivers} />}
      {repairs.length === 0 ? null : <RepairWorthPanel repairs={repairs} />}
      {investigate === undefined ? null : <FindOutPanel view={investigate} />}
      {flipMap === undefined ? null : <FlipMap view={flipMap} />}
      {later === undefined ? null : <LaterPanel view={later} />}
    </div>
  );
}
