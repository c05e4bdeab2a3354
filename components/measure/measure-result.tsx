import type { CheckView, Line, MethodView } from './view';

/** Short lines of a measurement: what it is and what it says. */
export function Lines(props: { readonly lines: readonly Line[] }) {
  if (props.lines.length === 0) return null;
  return (
    <dl className="rows">
      {props.lines.map((line) => (
        <div key={line.name} className="flex flex-wrap justify-between gap-x-4 py-1">
          <dt>{line.name}</dt>
          <dd className="font-semibold">{line.value}</dd>
        </div>
      ))}
    </dl>
  );
}

/** Doubts and hints of a measurement. */
export function Notes(props: { readonly notes: readonly string[] }) {
  return props.notes.map((note) => (
    <p key={note} className="note-doubt mt-2">
      {note}
    </p>
  ));
}

/** What can hurt, before the boxes are typed into. */
export function Caution(props: { readonly children: string }) {
  return <p className="note-danger mt-2 mb-2">{props.children}</p>;
}

/** Airflow found by one method: said as soon as it is there. */
export function MethodResult(props: { readonly result: MethodView | undefined; readonly missing: string }) {
  const { result } = props;
  return (
    <div role="status" className="mt-2 border-t-2 border-ink pt-2">
      {result === undefined ? (
        <p className="text-soft">{props.missing}</p>
      ) : (
        <>
          <p className="text-xl font-semibold">
            {result.value}, {result.perTon}
          </p>
          <p>{result.doubt}</p>
          <Verdict words={result.verdict} off={result.off} />
          {result.worked === undefined ? null : <p className="break-words text-soft">{result.worked}</p>}
        </>
      )}
    </div>
  );
}

/** A part against what it should be, with a plain verdict. */
export function CheckResult(props: { readonly check: CheckView }) {
  const { check } = props;
  return (
    <section className="mt-3 border-t-2 border-ink pt-2">
      <h4 className="font-semibold">{check.name}</h4>
      <Lines lines={check.lines} />
      <div role="status">
        <Verdict words={check.verdict} off={check.off} />
      </div>
    </section>
  );
}

/** A verdict in words; off-target ones stand out by mark and weight, not by colour. */
export function Verdict(props: { readonly words: string; readonly off: boolean }) {
  return (
    <p className={props.off ? 'font-semibold text-doubt' : ''}>
      <span aria-hidden="true">{props.off ? '◆ ' : '• '}</span>
      {props.words}
    </p>
  );
}
