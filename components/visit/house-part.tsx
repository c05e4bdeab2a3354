'use client';

import { useAppraisal } from '@/components/appraisal/appraisal-context';
import { useDraftState } from '@/components/draft/draft-context';
import { listAt, textAt } from '@/components/draft/draft-tree';
import { BillsFields } from '@/components/energy/bills-fields';
import { HeatStages } from '@/components/energy/heat-stages';
import { NumberField } from '@/components/form/number-field';
import { ListField, PickField, TickField } from '@/components/form/pick-field';
import { TextField } from '@/components/form/text-field';
import { CompanyLook } from '@/components/sheet/company-look';
import { t, tn } from '@/components/words/words';
import { ClimateField, type ClimateOption } from './climate-field';
import { Fold, Group } from './fold';
import { STATE_CODES } from './state-codes';

/** Unit and house: what the first answer needs stands first. */
export function HousePart(props: { readonly climates: readonly ClimateOption[] }) {
  const heats = useDraftState((s) => textAt(s.draft, 'unit.kind') !== 'airConditioner');
  const isListed = useDraftState((s) => textAt(s.draft, 'unit.refrigerant') !== '');
  return (
    <>
      <Group title={t('house.unit')} note={t('house.unitNote')}>
        <PickField path="unit.kind" words="unitKind" />
        <NumberField path="unit.nominalTons" />
        <ListField path="unit.refrigerant" unknown />
        {isListed ? null : (
          <>
            <TextField path="unit.otherRefrigerant" />
            <p className="text-soft">{t('house.otherRefrigerantHint')}</p>
          </>
        )}
        <PickField path="unit.metering" words="metering" unknown />
        <NumberField path="unit.manufactureYear" />
        {heats ? <NumberField path="unit.electricHeatKw" /> : null}
        <PickField path="unit.blower" words="blower" unknown />
      </Group>
      <div className="mt-2">
        <Fold title={t('house.plate')} aside={t('house.optional')}>
          <div className="rows">
            <NumberField path="unit.nameplateSubcoolingFd" />
            <NumberField path="unit.ratedLoadA" />
            <NumberField path="unit.ratedV" />
          </div>
        </Fold>
        <Fold title={t('house.ratings')} aside={t('house.optional')}>
          <p className="text-soft">{t('house.ratingsNote')}</p>
          <RatingFields path="unit.ratings" heats={heats} />
        </Fold>
        {heats ? (
          <Fold title={t('house.backup')} aside={t('house.optional')}>
            <HeatStages />
          </Fold>
        ) : null}
        <Fold title={t('house.unitNotes')} aside={t('house.optional')}>
          <TextField path="unit.note" long />
        </Fold>
      </div>
      <Group title={t('house.house')}>
        <TextField path="site.customer" />
        <TextField path="site.street" />
        <TextField path="site.town" />
        <ListField
          path="site.stateCode"
          options={STATE_CODES.map((code) => ({ value: code, words: code }))}
          unknown
        />
        <ClimateField climates={props.climates} />
        <NumberField path="site.floorAreaFt2" hint={t('house.floorHint')} />
      </Group>
      <div className="mt-2">
        <HouseFolds heats={heats} />
      </div>
      <Group title={t('house.visit')}>
        <TextField path="visitDate" date />
        <TextField path="technician" />
        <TextField path="company.name" />
        <TextField path="company.phone" />
        <TextField path="company.licence" />
        <CompanyLook />
        <TextField path="note" long />
      </Group>
    </>
  );
}

/** What narrows the yearly cost: the house itself, its rooms, its bills, its own weather. */
function HouseFolds(props: { readonly heats: boolean }) {
  const bills = useDraftState((s) => listAt(s.draft, 'bills').length);
  const inputs = useAppraisal().answer?.energyInputs;
  const assumed = (path: string) => ({ path, echo: inputs?.assumed[path] });
  return (
    <>
      <Fold
        title={t('house.bills')}
        aside={bills === 0 ? t('house.billsBest') : tn('house.billCount', bills)}
      >
        <BillsFields />
      </Fold>
      <Fold title={t('house.rooms')} aside={t('house.optional')}>
        <div className="rows">
          <NumberField {...assumed('site.heatingSetpointF')} />
          <NumberField path="site.heatingSetbackFd" hint={t('house.setbackHint')} />
          <NumberField path="site.heatingSetbackHoursPerDay" />
          <NumberField {...assumed('site.coolingSetpointF')} />
          <NumberField path="site.coolingSetupFd" />
          <NumberField path="site.coolingSetupHoursPerDay" />
        </div>
        {props.heats ? <PickField path="site.heatingComfort" words="comfort" unknown /> : null}
        <PickField path="site.coolingComfort" words="comfort" unknown />
        {inputs?.comfortNotes.map((note) => (
          <p key={note} className="note-doubt mt-2">
            {note}
          </p>
        ))}
      </Fold>
      <Fold title={t('house.building')} aside={t('house.optional')}>
        <div className="rows">
          <NumberField path="site.builtYear" />
          <NumberField path="site.altitudeFt" hint={t('house.altitudeHint')} />
        </div>
        <PickField path="site.insulation" words="insulation" unknown />
        {props.heats ? <TickField path="site.otherHeat" /> : null}
      </Fold>
      <Fold title={t('house.degreeDays')} aside={t('house.optional')}>
        <p className="text-soft">{t('house.degreeDaysHint')}</p>
        <div className="rows">
          <NumberField path="site.hdd65Fday" />
          <NumberField path="site.cdd65Fday" />
        </div>
        {inputs?.climateNotes.map((note) => (
          <p key={note} className="note-plain mt-2">
            {note}
          </p>
        ))}
      </Fold>
    </>
  );
}

/** Ratings of a unit, present or new. */
export function RatingFields(props: {
  readonly path: string;
  readonly heats: boolean;
  readonly stacked?: boolean;
}) {
  const cooling = ['seer2BtuPerWh', 'eer2BtuPerWh', 'seerBtuPerWh', 'eerBtuPerWh', 'cooling95Btuh'];
  const heating = ['hspf2BtuPerWh', 'hspfBtuPerWh', 'heating47Btuh', 'heating17Btuh'];
  return (
    <div className="rows">
      {[...cooling, ...(props.heats ? heating : [])].map((key) => (
        <NumberField key={key} path={`${props.path}.${key}`} />
      ))}
    </div>
  );
}
