import type { ReactNode } from 'react';
import { t } from '@/components/words/words';

/** What scrolls must be reachable by keyboard, although it is nothing to press. */
const REACHABLE = { tabIndex: 0 } as const;

/** A wide table in a box that scrolls by itself. */
export function ScrollBox(props: {
  readonly title: string;
  readonly className?: string;
  readonly children: ReactNode;
}) {
  return (
    <section
      {...REACHABLE}
      className={`scroll-box ${props.className ?? ''}`}
      aria-label={t('chart.table', { title: props.title })}
    >
      {props.children}
    </section>
  );
}
