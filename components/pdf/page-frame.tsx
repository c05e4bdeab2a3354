import { Page, Text } from '@react-pdf/renderer';
import type { ReactNode } from 'react';
import type { Sheet } from '@/lib/sheet/sheet';
import { ink, type Look, margin } from './look';
import { PageFoot } from './page-foot';

export type Paper = 'letter' | 'a4';

/** Size of the paper. [pt] */
export const paperSize: Readonly<Record<Paper, readonly [number, number]>> = {
  letter: [612, 792],
  a4: [595.28, 841.89],
};

/** Height left for the content of a page. [pt] */
export function contentHeight(paper: Paper): number {
  return paperSize[paper][1] - margin.top - margin.bottom - margin.footer;
}

/** Width left for the content of a page. [pt] */
export function contentWidth(paper: Paper): number {
  return paperSize[paper][0] - 2 * margin.sides;
}

type Props = {
  readonly sheet: Sheet;
  readonly size: readonly [number, number];
  readonly look: Look;
  readonly bookmark: string;
  /** Which page this is; a fixed number, since a sheet has two pages. */
  readonly number: 1 | 2;
  readonly children: ReactNode;
};

/** One page with its footer. */
export function PageFrame({ sheet, size, look, bookmark, number, children }: Props) {
  const pageOf = sheet.pageOf.replace('{page}', String(number)).replace('{pages}', '2');
  return (
    <Page
      size={[size[0], size[1]]}
      bookmark={bookmark}
      style={{
        fontSize: look.chart.fontSize,
        fontFamily: look.chart.fontFamily,
        color: ink.text,
        backgroundColor: ink.paper,
        paddingHorizontal: margin.sides,
        paddingTop: margin.top,
        paddingBottom: margin.bottom + margin.footer,
      }}
    >
      {children}
      {/* A fixed element is laid out more than once and would multiply a line height each time: it gets none. */}
      <PageFoot>
        <Text style={look.chart}>{sheet.footer}</Text>
        <Text style={look.chart}>{pageOf}</Text>
      </PageFoot>
    </Page>
  );
}
