import type { ClockView } from '@/components/appraisal/energy-inputs-view';
import { t } from '@/components/words/words';

type Day = ClockView['days'][number];

/** Shorter spans have no room for their price; it stands in the list below. */
const FEWEST_LABELLED_HOURS = 4;

const LOOKS = ['price-low', 'price-mid', 'price-high', 'price-top'];

/** The prices of the day as bars of 24 hours; what has no price is an open gap. */
export function PriceClocks(props: { readonly clocks: readonly ClockView[] }) {
  return (
    <figure className="py-2">
      <figcaption className="font-medium">{t('tariff.clock')}</figcaption>
      {props.clocks.map((clock) => (
        <div key={clock.months} className="mt-2">
          <p>{clock.months}</p>
          {clock.days.map((day) => (
            <DayBar key={day.name} day={day} />
          ))}
          <div aria-hidden="true" className="flex justify-between text-soft">
            {['0', '6', '12', '18', '24'].map((hour) => (
              <span key={hour}>{hour}</span>
            ))}
          </div>
        </div>
      ))}
    </figure>
  );
}

function DayBar(props: { readonly day: Day }) {
  const { name, spans } = props.day;
  return (
    <div className="mt-1">
      <p className="text-soft">{name}</p>
      <div aria-hidden="true" className="flex h-9 border border-edge">
        {spans.map((span) => (
          <span
            key={span.fromHour}
            className={`flex items-center justify-center overflow-hidden border-l border-edge first:border-l-0 ${
              span.rank === undefined ? 'price-gap' : (LOOKS[Math.min(span.rank, LOOKS.length - 1)] ?? '')
            }`}
            style={{ flexGrow: span.hours, flexBasis: 0 }}
          >
            {span.hours < FEWEST_LABELLED_HOURS ? null : (
              <span className="bg-paper px-1 leading-tight font-semibold">{span.price ?? '?'}</span>
            )}
          </span>
        ))}
      </div>
      <ul className="flex flex-wrap gap-x-4">
        {spans.map((span) => (
          <li key={span.words} className={span.rank === undefined ? 'font-semibold text-doubt' : ''}>
            {span.words}
          </li>
        ))}
      </ul>
    </div>
  );
}
