import type { RepairWorth } from '@/components/appraisal/decide-view';
import { Titled } from '@/components/results/titled';
import { td } from '@/components/words/decide-words';

/** Each repair's price against what it may cost, and the rules of thumb beside the full answer. */
export function RepairWorthPanel(props: { readonly repairs: readonly RepairWorth[] }) {
  return (
    <Titled title={td('worth.title')} level={2} className="panel min-w-0">
      <p className="mt-1 text-soft">{td('worth.note')}</p>
      <div className="mt-2 grid gap-6 lg:grid-cols-2">
        {props.repairs.map((repair) => (
          <section key={repair.id} aria-labelledby={`worth-${repair.id}`}>
            <h3 id={`worth-${repair.id}`} className="text-lg">
              {repair.name}
            </h3>
            <dl className="rows mt-1">
              <Line name={td('worth.price')} text={repair.price} quoted />
              <Line name={td('worth.breakEven')} text={repair.breakEven} />
              {repair.rules.map((rule) => (
                <Line
                  key={rule.name}
                  name={rule.name}
                  text={td('worth.says', { figure: rule.figure, says: rule.says })}
                />
              ))}
              <Line name={td('worth.full')} text={repair.full} />
            </dl>
            {repair.differs.length === 0 ? (
              <p className="mt-2">{td('worth.agree')}</p>
            ) : (
              <ul className="mt-2 list-disc pl-6">
                {repair.differs.map((sentence) => (
                  <li key={sentence}>{sentence}</li>
                ))}
              </ul>
            )}
          </section>
        ))}
      </div>
    </Titled>
  );
}

function Line(props: { readonly name: string; readonly text: string; readonly quoted?: boolean }) {
  return (
    <div className="flex flex-wrap justify-between gap-x-4 py-1">
      <dt>{props.name}</dt>
      <dd className={props.quoted === true ? 'font-mono' : 'font-semibold'}>{props.text}</dd>
    </div>
  );
}
