import { Document, type DocumentProps } from '@react-pdf/renderer';
import type { Sheet } from '@/lib/sheet/sheet';
import type { PageOneFit, PageTwoFit } from './fit';
import { PageFrame } from './page-frame';
import { PageOne } from './page-one';
import { PageTwo } from './page-two';
import type { Setting } from './typesetting';

type Props = {
  readonly sheet: Sheet;
  /** Size of the page, and width of its content. [pt] */
  readonly size: readonly [number, number];
  readonly width: number;
  /** How each of the two pages is set; while one is measured, the other is left out. */
  readonly one?: Setting<PageOneFit> | undefined;
  readonly two?: Setting<PageTwoFit> | undefined;
  readonly onRender?: NonNullable<DocumentProps['onRender']>;
};

/** The sheet as a document of two pages. Its only date is the visit's, so that the same sheet gives the same bytes. */
export function SheetDocument({ sheet, size, width, one, two, onRender }: Props) {
  const date = new Date(`${sheet.visitDate}T00:00:00Z`);
  const frame = { sheet, size };
  const page = { sheet, width };
  return (
    <Document
      title={sheet.documentTitle}
      author={sheet.author}
      subject={sheet.subject}
      language={sheet.languageTag}
      creator="Keepworth"
      producer="Keepworth"
      creationDate={date}
      modificationDate={date}
      {...(onRender === undefined ? {} : { onRender })}
    >
      {one === undefined ? null : (
        <PageFrame {...frame} look={one.look} bookmark={sheet.pageOne.heading} number={1}>
          <PageOne {...page} {...one} />
        </PageFrame>
      )}
      {two === undefined ? null : (
        <PageFrame {...frame} look={two.look} bookmark={sheet.pageTwo.heading} number={2}>
          <PageTwo {...page} {...two} />
        </PageFrame>
      )}
    </Document>
  );
}
