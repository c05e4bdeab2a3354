import type { InvestigateView } from '@/components/appraisal/decide-view';
import { ScrollBox } from '@/components/results/scroll-box';
import { Titled } from '@/components/results/titled';
import { t } from '@/components/words/words';

/** Whether finding out more before choosing is worth its money, test by test. */
export function FindOutPanel(props: { readonly view: InvestigateView }) {
  const { sentence, most, causes, tests } = props.view;
  return (
    <Titled title={t('find.title')} level={2} className="panel min-w-0">
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
        <ScrollBox title={t('find.tests')} className="mt-3">
          <table className="w-full min-w-xl">
            <caption className="text-left text-soft">{t('find.caption')}</caption>
            <thead>
              <tr className="border-b-2 border-ink align-bottom">
                <th scope="col" className="p-2 text-left">
                  {t('find.what')}
                </th>
                <th scope="col" className="p-2 text-right">
                  {t('find.saves')}
                </th>
                <th scope="col" className="p-2 text-right">
                  {t('find.price')}
                </th>
                <th scope="col" className="p-2 text-right">
                  {t('find.takes')}
                </th>
                <th scope="col" className="p-2 text-left">
                  {t('find.verdict')}
                </th>
              </tr>
            </thead>
            <tbody>
              {tests.map((test) => (
                <tr key={test.what} className="border-b border-hair align-top">
                  <th scope="row" className="p-2 text-left font-normal">
                    {test.what}
                  </th>
                  <td className="p-2 text-right">{test.saves}</td>
                  <td className="p-2 text-right font-mono">{test.price}</td>
                  <td className="p-2 text-right">{test.takes}</td>
                  <td className="p-2 font-semibold">{test.verdict}</td>
                </tr>
              ))}
            </tbody>
          </table>
        </ScrollBox>
      )}
    </Titled>
  );
}
