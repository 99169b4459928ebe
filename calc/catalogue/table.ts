import { readFileSync } from 'node:fs';
import type { z } from 'zod';
import { parseCsv, type CsvRow } from './csv.ts';
import { deepFreeze } from './freeze.ts';
import { underHeading } from './heading-unit.ts';

/** The text of one of the catalogue's own tables. */
export function tableText(file: string): string {
  return readFileSync(new URL(`./tables/${file}`, import.meta.url), 'utf8');
}

/**
 * Reads a table into typed rows in SI units. A heading that ends in a unit gives a number under the SI name
 * (`bending_psi` is read as `bending_Pa`), or null where the cell is empty; every other cell is text for the schema to read.
 *
 * @param text the whole table
 * @param file its name, for messages
 * @param schema what a row must be
 * @returns the rows in order, frozen
 * @throws Error naming file, line and column of the first bad cell
 */
export function readTable<S extends z.ZodType>(
  text: string,
  file: string,
  schema: S,
): readonly z.output<S>[] {
  return deepFreeze(parseCsv(text, file).map((row) => readRow(row, file, schema)));
}

function readRow<S extends z.ZodType>(row: CsvRow, file: string, schema: S): z.output<S> {
  const record: Record<string, string | number | null> = {};
  const headingOf = new Map<string, string>();
  for (const [heading, cell] of row.cells) {
    const number = readNumber(heading, cell, `${file}, line ${row.line}, column ${heading}`);
    const name = number?.name ?? heading;
    record[name] = number === null ? cell : number.value;
    headingOf.set(name, heading);
  }
  const read = schema.safeParse(record);
  if (read.success) return read.data;
  const [issue] = read.error.issues;
  const column = String(issue?.path[0] ?? '');
  throw new Error(
    `${file}, line ${row.line}, column ${headingOf.get(column) ?? column}: ${issue?.message ?? 'not readable'}`,
  );
}

function readNumber(heading: string, cell: string, place: string): ReturnType<typeof underHeading> {
  try {
    return underHeading(heading, cell);
  } catch (error) {
    throw new Error(`${place}: ${error instanceof Error ? error.message : 'not readable'}`, { cause: error });
  }
}
