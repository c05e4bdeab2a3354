import type { ChoiceWays, WayView } from '@/components/appraisal/ways-view';
import { Titled } from '@/components/results/titled';

/** Ways to pay for each choice side by side, set apart from everything else, with all that must stand beside a payment. */
export function WaysBox(props: {
  readonly title: string;
  readonly choices: readonly ChoiceWays[];
  /** What is said where nothing is lent. */
  readonly none?: string;
  readonly terms: string;
}) {
  return (
    <Titled title={props.title} level={2} className="min-w-0 border-4 border-double border-ink bg-leaf p-4">
      {props.choices.length === 0 ? <p>{props.none}</p> : null}
      {props.choices.map((choice) => (
        <section key={choice.id} aria-labelledby={`ways-${choice.id}`} className="mt-4">
          <h3 id={`ways-${choice.id}`} className="text-lg">
            {choice.name}
          </h3>
          <p>{choice.saving}</p>
          <ul className="mt-2 grid gap-4 md:grid-cols-2">
            {choice.ways.map((way) => (
              <Way key={way.key} way={way} />
            ))}
          </ul>
        </section>
      ))}
      <p className="mt-3">{props.terms}</p>
    </Titled>
  );
}

function Way(props: { readonly way: WayView }) {
  const { way } = props;
  return (
    <li className="min-w-0 border-2 border-hair p-3">
      <h4 className="font-serif font-bold">{way.title}</h4>
      <p className="min-h-6 text-soft">{way.counted ?? ''}</p>
      {way.apr === undefined ? null : <p className="text-xl font-bold">{way.apr}</p>}
      <dl className="rows">
        {way.rows.map((row) => (
          <div key={row.label} className="flex flex-wrap justify-between gap-x-4 py-1">
            <dt>{row.label}</dt>
            <dd className="font-mono">{row.text}</dd>
          </div>
        ))}
      </dl>
      {[...way.notes, ...way.disclosures].map((sentence) => (
        <p key={sentence} className="mt-1">
          {sentence}
        </p>
      ))}
    </li>
  );
}
