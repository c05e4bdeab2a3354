import { View } from '@react-pdf/renderer';
import type { ReactNode } from 'react';
import { margin } from './look';

/** The last line of every page, within the margins. */
export function PageFoot(props: { readonly children: ReactNode }) {
  return (
    <View
      fixed
      style={{
        position: 'absolute',
        left: margin.sides,
        right: margin.sides,
        bottom: margin.bottom,
        flexDirection: 'row',
        justifyContent: 'space-between',
      }}
    >
      {props.children}
    </View>
  );
}
