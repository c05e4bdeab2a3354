import { Titled } from '@/components/results/titled';
import type { Sheet } from '@/lib/sheet/sheet';

/** Credit terms set apart from everything else, as on the sheet. */
export function FinancingBox(props: { readonly financing: Sheet['pageTwo']['financing'] }) {
  const { title, aprLabel, plans, terms, none } = props.financing;
  return (
    <Titled title={title} level={2} className="border-4 border-double border-ink bg-leaf p-4">
      {none === undefined ? null : <p>{none}</p>}
      <div className="grid gap-6 md:grid-cols-2">
        {plans.map((plan) => (
          <div key={plan.name}>
            <h3 className="mt-3 text-lg">{plan.name}</h3>
            <p className="mt-1 text-xl font-bold">
              {aprLabel}: {plan.apr}
            </p>
            <dl className="rows">
              {plan.rows.map((row) => (
                <div key={row.label} className="flex flex-wrap justify-between gap-x-4 py-1">
                  <dt>{row.label}</dt>
                  <dd className="font-mono">{row.text}</dd>
                </div>
              ))}
            </dl>
          </div>
        ))}
      </div>
      <p className="mt-3">{terms}</p>
    </Titled>
  );
}
