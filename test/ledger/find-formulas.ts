import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { isFormula, type Formula } from '../../calc/formula/formula.ts';

/** A formula and where it stands. */
export interface FoundFormula {
  readonly formula: Formula;
  /** From the project's folder: `calc/mechanics/solids.ts`. */
  readonly file: string;
  /** What the file exports it as. */
  readonly name: string;
}

const project = join(import.meta.dirname, '..', '..');

/** Every module of the engine but the ones that make formulas, in the order of their names. */
function modules(): string[] {
  return readdirSync(join(project, 'calc'), { recursive: true, encoding: 'utf8' })
    .map((file) => `calc/${file.replaceAll('\\', '/')}`)
    .filter((file) => file.endsWith('.ts') && !file.startsWith('calc/formula/'))
    .sort();
}

/**
 * Every formula of the engine, by file and then in the order of the names.
 *
 * @throws Error where a module makes a formula that it doesn't export: nothing could prove it or list it
 */
export async function findFormulas(): Promise<FoundFormula[]> {
  const found: FoundFormula[] = [];
  for (const file of modules()) {
    const made = readFileSync(join(project, file), 'utf8').match(/\bformula\(\s*\{/g)?.length ?? 0;
    if (made === 0) continue;
    const exported = Object.entries((await import(join(project, file))) as Record<string, unknown>);
    const formulas = exported.flatMap(([name, value]) =>
      isFormula(value) ? [{ formula: value, file, name }] : [],
    );
    if (formulas.length !== made) {
      throw new Error(`${file} makes ${made} formulas and exports ${formulas.length}`);
    }
    found.push(...formulas.sort((a, b) => (a.name < b.name ? -1 : 1)));
  }
  return found;
}
