import type { RefrigerantName } from '../../visit/refrigerant-names';
import r22 from './data/tables/R-22.json';
import r32 from './data/tables/R-32.json';
import r134a from './data/tables/R-134a.json';
import r407c from './data/tables/R-407C.json';
import r410a from './data/tables/R-410A.json';
import r454b from './data/tables/R-454B.json';
import type { TableData } from './table-format';

/** Every refrigerant with its generated table: all that run time needs. */
export const tables: Readonly<Record<RefrigerantName, TableData>> = {
  'R-22': r22,
  'R-410A': r410a,
  'R-407C': r407c,
  'R-32': r32,
  'R-454B': r454b,
  'R-134a': r134a,
};
