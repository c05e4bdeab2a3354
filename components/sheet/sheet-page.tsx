import { ChoiceCards, ChoiceTable } from '@/components/compare/choice-table';
import { FinancingBox } from '@/components/compare/financing-box';
import { TotalBars } from '@/components/compare/total-bars';
import { ColumnHeads } from '@/components/results/column-heads';
import { ScrollBox } from '@/components/results/scroll-box';
import { Titled } from '@/components/results/titled';
import type { LabelledText, Sheet } from '@/lib/sheet/sheet';
import { CostBar } from './cost-bar';

/** The sheet as a page: the very words and numbers of the paper, with all that the paper has no room for. */
export function SheetPage(props: { readonly sheet: Sheet }) {
  const { pageOne: one, pageTwo: two, look, footer } = props.sheet;
  return (
    <article lang={props.sheet.languageTag} className="grid gap-8 text-lg">
      <header style={look?.accent === undefined ? {} : { borderTop: `6px solid ${look.accent}` }}>
        <div className="flex flex-wrap items-start justify-between gap-4 pt-3">
          <h1 className="text-2xl md:text-3xl">{one.heading}</h1>
          {look?.logo === undefined ? null : (
            <div
              aria-hidden="true"
              className="print-ink h-16 w-60 bg-contain bg-right bg-no-repeat"
              style={{ backgroundImage: `url(${look.logo})` }}
            />
          )}
        </div>
        {one.invented === undefined ? null : <p className="font-semibold">{one.invented}</p>}
        <Facts facts={one.facts} />
      </header>
      <Titled title={one.finding.title} level={2}>
        <Sentences sentences={one.finding.sentences} />
        {one.finding.dangers.map((danger) => (
          <p key={danger} className="note-danger mt-2">
            {danger}
          </p>
        ))}
        {one.finding.conflict === undefined ? null : (
          <p className="note-doubt mt-2">{one.finding.conflict}</p>
        )}
      </Titled>
      <Titled title={one.runningCost.title} level={2}>
        <Sentences sentences={one.runningCost.sentences} />
        <CostBar bar={one.runningCost.bar} />
        <p className="text-base">{one.runningCost.basis}</p>
      </Titled>
      <Titled title={one.choices.title} level={2} className="panel min-w-0">
        <ChoiceTable table={one.choices} caption={one.choices.title} />
        <ChoiceCards table={one.choices} />
        <MoreChoices sheet={props.sheet} />
        {one.leftOut === undefined ? null : <p className="note-doubt mt-2">{one.leftOut}</p>}
      </Titled>
      <Titled title={one.totals.title} level={2} className="panel">
        <TotalBars chart={one.totals} />
        <Sentences sentences={one.explanations} small />
      </Titled>
      <Titled title={one.waiting.title} level={2}>
        <Sentences sentences={one.waiting.sentences} />
      </Titled>
      <Titled title={one.advice.title} level={2} className="border-2 border-ink p-3">
        <Sentences sentences={one.advice.sentences} />
        {one.advice.wouldChange.length === 0 ? null : (
          <>
            <p className="mt-2 font-semibold">{one.advice.changeTitle}</p>
            <ul className="list-disc pl-6">
              {one.advice.wouldChange.map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ul>
          </>
        )}
      </Titled>
      <Readings readings={two.readings} />
      <Assumptions two={two} />
      <FinancingBox financing={two.financing} />
      {[two.cautions, two.rebates, two.excluded, two.surer, two.doubts]
        .filter((section) => section.sentences.length > 0)
        .map((section) => (
          <Titled key={section.title} title={section.title} level={2}>
            <ul className="list-disc pl-6 text-base">
              {section.sentences.map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
            </ul>
          </Titled>
        ))}
      <p className="border-t border-hair pt-2 text-base text-soft">{footer}</p>
    </article>
  );
}

/** Choices that the paper puts on page two. */
function MoreChoices({ sheet }: { readonly sheet: Sheet }) {
  const more = sheet.pageTwo.moreChoices;
  if (more === undefined) return null;
  return (
    <section className="mt-4">
      <h3 className="text-lg">{more.title}</h3>
      <ChoiceTable table={more} caption={more.title} />
      <ChoiceCards table={more} />
    </section>
  );
}

function Facts({ facts }: { readonly facts: readonly LabelledText[] }) {
  return (
    <dl className="mt-2 grid gap-x-3 text-base sm:grid-cols-[auto_1fr]">
      {facts.map((fact) => (
        <div key={fact.label} className="contents">
          <dt className="font-semibold">{fact.label}</dt>
          <dd className="min-w-0 wrap-anywhere" dir="auto">
            {fact.text}
          </dd>
        </div>
      ))}
    </dl>
  );
}

function Sentences(props: { readonly sentences: readonly string[]; readonly small?: boolean }) {
  return props.sentences.map((sentence) => (
    <p key={sentence} className={`mt-1 ${props.small === true ? 'text-base' : ''}`}>
      {sentence}
    </p>
  ));
}

function Readings({ readings }: { readonly readings: Sheet['pageTwo']['readings'] }) {
  return (
    <Titled title={readings.title} level={2} className="panel min-w-0 text-base">
      {readings.none === undefined ? null : <p>{readings.none}</p>}
      {readings.seen === undefined ? null : <p>{readings.seen}</p>}
      {readings.tables.map((table) => (
        <div key={table.title} className="mt-3">
          <h3 className="text-lg">{table.title}</h3>
          {table.rows.length === 0 ? null : (
            <ScrollBox title={table.title}>
              <table className="w-full min-w-xl">
                <ColumnHeads columns={readings.columns} className="p-1" />
                <tbody>
                  {table.rows.map((row) => (
                    <tr key={row.name} className={`border-b border-hair ${row.off ? 'font-semibold' : ''}`}>
                      <th scope="row" className="p-1 text-left font-[inherit]">
                        {row.name}
                      </th>
                      <td className="p-1">{row.found}</td>
                      <td className="p-1">{row.target}</td>
                      <td className="p-1">{row.verdict}</td>
                      <td className="p-1">{row.basisWords}</td>
                    </tr>
                  ))}
                </tbody>
              </table>
            </ScrollBox>
          )}
          {table.also === undefined ? null : <p>{table.also}</p>}
          {table.rest === undefined ? null : <p>{table.rest}</p>}
        </div>
      ))}
    </Titled>
  );
}

function Assumptions({ two }: { readonly two: Sheet['pageTwo'] }) {
  const { assumptions, counts } = two;
  return (
    <Titled title={assumptions.title} level={2} className="panel min-w-0 text-base">
      <p className="mt-1">
        {counts.title}: {counts.items.map((item) => item.words).join(', ')}
      </p>
      <ScrollBox title={assumptions.title}>
        <table className="w-full min-w-2xl">
          <ColumnHeads columns={assumptions.columns} className="p-1" />
          <tbody>
            {assumptions.rows.map((row) => (
              <tr key={row.name} className="border-b border-hair align-top">
                <th scope="row" className="p-1 text-left font-semibold">
                  {row.name}
                  {row.effect === undefined ? null : <span className="font-normal">, {row.effect}</span>}
                </th>
                <td className="p-1">{row.value}</td>
                <td className="p-1">{row.range}</td>
                <td className="p-1">{row.source}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollBox>
    </Titled>
  );
}
