import type { FlipMapView } from '@/components/appraisal/decide-view';
import { KindMark } from '@/components/compare/choice-table';
import { ScrollBox } from '@/components/results/scroll-box';
import { Titled } from '@/components/results/titled';
import { Fold } from '@/components/visit/fold';
import { td } from '@/components/words/decide-words';

/** Ground of a choice on the map: a pattern of its own, so that a black-and-white copy tells them apart. */
const GROUNDS = [
  'ground-plain',
  'ground-rising',
  'ground-dots',
  'ground-falling',
  'ground-level',
  'ground-grid',
];

function groundOf(key: number): string {
  return GROUNDS[key % GROUNDS.length] ?? 'ground-plain';
}

/** Where the answer flips: years of stay down, price of the repair across, a letter and a pattern in each field. */
export function FlipMap(props: { readonly view: FlipMapView }) {
  const { repair, prices, rows, keys } = props.view;
  const used = keys.filter((_, i) => rows.some((row) => row.cells.some((cell) => cell.key === i)));
  return (
    <Titled title={td('flip.title')} level={2} className="panel min-w-0">
      <p className="mt-1">{td('flip.what', { repair })}</p>
      <ul className="mt-2 grid gap-1">
        {used.map((key) => (
          <li key={key.id} className="flex items-center gap-2">
            <span
              aria-hidden="true"
              className={`inline-flex size-8 items-center justify-center border border-edge font-bold ${groundOf(keys.indexOf(key))}`}
            >
              <span className="bg-leaf px-1">{key.letter}</span>
            </span>
            <span>
              <KindMark kind={key.kind} /> <span className="sr-only">{key.letter}: </span>
              {key.name}
            </span>
          </li>
        ))}
      </ul>
      <p className="mt-2 text-soft">{td('flip.caption', { repair })}</p>
      <ScrollBox title={td('flip.title')}>
        <table className="w-full text-center">
          <caption className="sr-only">{td('flip.caption', { repair })}</caption>
          <thead>
            <tr>
              <th scope="col" className="p-1 text-left">
                {td('flip.stay')}
              </th>
              {prices.map((price) => (
                <th key={price} scope="col" className="p-1 font-normal">
                  {price}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map((row) => (
              <tr key={row.stay}>
                <th scope="row" className="p-1 text-left font-normal whitespace-nowrap">
                  {row.stay}
                </th>
                {row.cells.map((cell) => (
                  <td
                    key={cell.price}
                    className={`print-ink border border-edge p-1 ${groundOf(cell.key)} ${cell.here ? 'outline-4 -outline-offset-4 outline-ink' : ''}`}
                  >
                    <span className="bg-leaf px-1 font-bold">{keys[cell.key]?.letter}</span>
                    {cell.here ? <span className="sr-only">, {td('flip.here')}</span> : null}
                  </td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      </ScrollBox>
      <p className="text-soft">{td('flip.hereNote')}</p>
      <Fold title={td('flip.inWords')}>
        <ul className="list-disc pl-6">
          {rows.map((row) => (
            <li key={row.stay}>{row.sentence}</li>
          ))}
        </ul>
      </Fold>
    </Titled>
  );
}
