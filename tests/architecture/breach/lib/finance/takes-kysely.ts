export type { Kysely } from 'kysely';
