import { Document, type DocumentProps } from '@react-pdf/renderer';
import type { Sheet } from '@/lib/sheet/sheet';
import type { PageOneFit, PageTwoFit } from './fit';
import type { Look } from './look';
import { PageFrame } from './page-frame';
import { PageOne } from './page-one';
import { PageTwo } from './page-two';

type Props = {
  readonly sheet: Sheet;
  /** Size of the page, and width of its content. [pt] */
  readonly size: readonly [number, number];
  readonly width: number;
  readonly look: Look;
  readonly fits: readonly [PageOneFit, PageTwoFit];
  readonly onRender?: NonNullable<DocumentProps['onRender']>;
};

/** The sheet as a document of two pages. Its only date is the visit's, so that the same sheet gives the same bytes. */
export function SheetDocument({ sheet, size, width, look, fits, onRender }: Props) {
  const date = new Date(`${sheet.visitDate}T00:00:00Z`);
  const frame = { sheet, size, look };
  const page = { sheet, width, look };
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
      <PageFrame {...frame} bookmark={sheet.pageOne.heading} number={1}>
        <PageOne {...page} fit={fits[0]} />
      </PageFrame>
      <PageFrame {...frame} bookmark={sheet.pageTwo.heading} number={2}>
        <PageTwo {...page} fit={fits[1]} />
      </PageFrame>
    </Document>
  );
}
