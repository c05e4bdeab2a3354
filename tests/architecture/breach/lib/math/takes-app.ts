export type { Page } from '../../app/fine-target';
