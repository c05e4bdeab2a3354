import type { InvestigateView } from '@/components/appraisal/decide-view';
import { ScrollBox } from '@/components/results/scroll-box';
import { Titled } from '@/components/results/titled';
import { td } from '@/components/words/decide-words';

/** Whether finding out more before choosing is worth its money, test by test. */
export function FindOutPanel(props: { readonly view: InvestigateView }) {
  const { sentence, most, causes, tests } = props.view;
  return (
    <Titled title={td('find.title')} level={2} className="panel min-w-0">
      <p className="mt-1 text-lg font-semibold">{sentence}</p>
      {most === undefined ? null : <p className="mt-1">{most}</p>}
      {causes.length === 0 ? null : (
        <ul className="mt-2 list-disc pl-6">
          {causes.map((cause) => (
            <li key={cause}>{cause}</li>
          ))}
        </ul>
      )}
      {tests.length === 0 ? null : (
        <>
          <p className="mt-3 text-soft">{td('find.caption')}</p>
          <ScrollBox title={td('find.tests')}>
            <table className="w-full">
              <caption className="sr-only">{td('find.tests')}</caption>
              <thead>
                <tr className="border-b-2 border-ink align-bottom">
                  <th scope="col" className="p-2 text-left">
                    {td('find.what')}
                  </th>
                  <th scope="col" className="p-2 text-right">
                    {td('find.saves')}
                  </th>
                  <th scope="col" className="p-2 text-right">
                    {td('find.price')}
                  </th>
                  <th scope="col" className="p-2 text-right">
                    {td('find.takes')}
                  </th>
                </tr>
              </thead>
              <tbody>
                {tests.map((test) => (
                  <tr key={test.what} className="border-b border-hair align-top">
                    <th scope="row" className="p-2 text-left font-normal">
                      {test.what}
                      <span className="block font-semibold">{test.verdict}</span>
                    </th>
                    <td className="p-2 text-right">{test.saves}</td>
                    <td className="p-2 text-right font-mono">{test.price}</td>
                    <td className="p-2 text-right">{test.takes}</td>
                  </tr>
                ))}
              </tbody>
            </table>
          </ScrollBox>
        </>
      )}
    </Titled>
  );
}
