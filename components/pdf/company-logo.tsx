import { Image } from '@react-pdf/renderer';

const box = { width: 110, height: 42 } as const;

/** The company's mark, small, in the upper right corner. */
export function CompanyLogo({ source }: { readonly source: string }) {
  return <Image src={source} style={{ ...box, objectFit: 'contain', objectPosition: '100% 0%' }} />;
}
