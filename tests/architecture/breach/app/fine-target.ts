export type Page = 'page';
