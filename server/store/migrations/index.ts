import type { Kysely } from 'kysely';
import type { Column } from '../columns.ts';
import type { Tables } from '../tables.ts';
import { jobs } from './001-jobs.ts';
import { accounts } from './002-accounts.ts';
import { issued } from './003-issued.ts';

/** One step from a schema to the next. It never changes once it has been released. */
export type Migration = (db: Kysely<Tables>, column: Column) => Promise<void>;

/** Every step, in order; the schema's version is how many have been taken. */
export const migrations: readonly Migration[] = [jobs, accounts, issued];
