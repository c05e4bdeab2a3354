import type { Metadata, Viewport } from 'next';
import type { ReactNode } from 'react';
import { FieldUse } from '@/components/offline/field-use';
import { t } from '@/components/words/words';
import './globals.css';

export const metadata: Metadata = {
  title: { default: t('app.name'), template: `%s | ${t('app.name')}` },
  description: t('app.description'),
};

export const viewport: Viewport = {
  width: 'device-width',
  initialScale: 1,
  themeColor: [
    { media: '(prefers-color-scheme: light)', color: '#fbfaf6' },
    { media: '(prefers-color-scheme: dark)', color: '#131117' },
  ],
};

export default function RootLayout(props: { children: ReactNode }) {
  return (
    <html lang="en">
      <body>
        <a
          href="#main"
          className="sr-only focus:not-sr-only focus:absolute focus:z-20 focus:bg-leaf focus:p-3"
        >
          {t('app.skip')}
        </a>
        <FieldUse />
        <main id="main" tabIndex={-1} className="outline-none">
          {props.children}
        </main>
      </body>
    </html>
  );
}
