import Database from 'better-sqlite3';

export const open = Database;
