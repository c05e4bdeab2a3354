import { readFileSync } from 'node:fs';
import Database from 'better-sqlite3';
import { Kysely } from 'kysely';
import type { Of } from '../visit/fine-target';

export type Uses = [Of, typeof readFileSync, typeof Database, typeof Kysely];
