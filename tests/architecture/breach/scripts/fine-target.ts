export type Script = 'script';
