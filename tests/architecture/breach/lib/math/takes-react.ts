export type { ReactNode } from 'react';
