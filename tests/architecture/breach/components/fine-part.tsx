import { useState } from 'react';
import type { Of } from '@/lib/sheet/fine-target';

export function Part({ of }: { of: Of }) {
  return <p>{useState(of)[0]}</p>;
}
