export type { Script } from '../../scripts/fine-target';
