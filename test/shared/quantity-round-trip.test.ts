import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  parseQuantity,
  quantity,
  show,
  showInCalculation,
  unitOfKind,
  unitsOfKind,
  type Kind,
  type UnitSystem,
} from '../../shared/quantity/index.ts';
import { kinds } from '../units.ts';

const inch = 0.0254;
const systems: readonly UnitSystem[] = ['inch-pound', 'metric'];
const runs = { numRuns: 500 };

function value(text: string, kind: Kind, bare?: string): number {
  const parsed = parseQuantity(text, kind, bare);
  if (!parsed.ok) throw new Error(`${text}: ${parsed.message}`);
  return parsed.value;
}

/** What a person would type again after reading a shown quantity: the decimal in parentheses where there is one. */
function typedAgain(shown: string): string {
  return /\(([^)]+)\)$/.exec(shown)?.[1] ?? shown;
}

function near(actual: number, expected: number, relative: number): boolean {
  return Math.abs(actual - expected) <= relative * Math.max(Math.abs(expected), Number.MIN_VALUE);
}

describe('a length on the marks of a rule', () => {
  it('in sixteenths of an inch is the same length after being shown and read', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 16 * 480 }), (sixteenths) => {
        const length_m = (sixteenths / 16) * inch;
        const shown = show(length_m, 'm', 'inch-pound');
        expect(shown).not.toContain('(');
        expect(near(value(shown, 'length'), length_m, 1e-12)).toBe(true);
      }),
      runs,
    );
  });

  it('in tenths of a millimetre is the same length after being shown and read', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 120_000 }), (tenths) => {
        const length_m = tenths / 10_000;
        expect(near(value(show(length_m, 'm', 'metric'), 'length'), length_m, 1e-12)).toBe(true);
      }),
      runs,
    );
  });

  it('means the same however feet, inches and a fraction are spelt', () => {
    const feetMark = fc.constantFrom(' ft ', ' ft', 'ft ', "'", "' ", "'-", ' feet ', ' foot ', '′');
    const inchMark = fc.constantFrom(' in', 'in', '"', ' inches', ' inch', '″', "''");
    const joint = fc.constantFrom('-', ' ', ' - ', '- ', '–');
    fc.assert(
      fc.property(
        fc.nat(20),
        fc.nat(11),
        fc.constantFrom(2, 4, 8, 16, 32),
        fc.nat(31),
        feetMark,
        inchMark,
        joint,
        (feet, inches, under, over, footMark, mark, join) => {
          const rest = over % under;
          const fraction = rest === 0 ? '' : `${join}${rest}/${under}`;
          const expected = (feet * 12 + inches + rest / under) * inch;
          expect(
            near(value(`${feet}${footMark}${inches}${fraction}${mark}`, 'length'), expected, 1e-12),
          ).toBe(true);
          const inchesAlone = `${feet * 12 + inches}${fraction}${mark}`;
          expect(near(value(inchesAlone, 'length'), expected, 1e-12)).toBe(true);
        },
      ),
      runs,
    );
  });
});

describe('a decimal with any unit', () => {
  it('is the number times the factor of the unit, with the unit written or printed beside the field', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...kinds),
        fc.nat(),
        fc.integer({ min: 0, max: 10 ** 9 }),
        fc.nat(6),
        (kind, pick, digits, places) => {
          const units = [...unitsOfKind[kind]];
          const [unit, factor] = units[pick % units.length] ?? ['', NaN];
          const number = (digits / 10 ** places).toFixed(places);
          for (const text of [`${number} ${unit}`, `${number}${unit}`, ` ${number}  ${unit} `]) {
            expect(near(value(text, kind), Number(number) * factor, 1e-15)).toBe(true);
          }
          expect(value(number, kind, unit)).toBe(value(`${number} ${unit}`, kind));
        },
      ),
      runs,
    );
  });
});

describe('a result', () => {
  const ordinary = fc.double({ min: 1e-6, max: 1e7, noNaN: true });

  it('read back from its own words is the same within the rounding of the words', () => {
    fc.assert(
      fc.property(fc.constantFrom(...kinds), fc.constantFrom(...systems), ordinary, (kind, system, si) => {
        const { value: kept, shown, unit } = quantity(si, unitOfKind[kind], system);
        expect(kept).toBe(si);
        expect(unit).toBe(unitOfKind[kind]);
        const read = value(typedAgain(shown), kind);
        // Three figures; lengths to a hundredth of an inch, or two figures below one; to a tenth or hundredth of a millimetre.
        const rounding =
          kind !== 'length'
            ? 0.005 * si
            : system === 'metric'
              ? si >= 0.01
                ? 0.00005
                : 0.000005
              : si >= inch
                ? 0.005 * inch
                : 0.05 * si;
        expect(Math.abs(read - si)).toBeLessThanOrEqual(rounding * (1 + 1e-9) + 1e-6 * inch);
      }),
      { numRuns: 3000 },
    );
  });

  it('in the units of the calculation keeps four figures', () => {
    fc.assert(
      fc.property(fc.constantFrom(...kinds), fc.constantFrom(...systems), ordinary, (kind, system, si) => {
        // The calculation works with a load per area as with a stress: in psi or MPa.
        const read = value(
          showInCalculation(si, unitOfKind[kind], system),
          kind === 'area-load' ? 'stress' : kind,
        );
        expect(Math.abs(read - si)).toBeLessThanOrEqual(0.0005 * si * (1 + 1e-9));
      }),
      { numRuns: 3000 },
    );
  });

  it('is never shown as another sign or as nothing where it is something', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...systems),
        fc.double({ min: 1e-5, max: 12, noNaN: true }),
        (system, length_m) => {
          expect(value(typedAgain(show(length_m, 'm', system)), 'length')).toBeGreaterThan(0);
          expect(typedAgain(show(-length_m, 'm', system))).toBe(
            `-${typedAgain(show(length_m, 'm', system))}`,
          );
        },
      ),
      runs,
    );
  });
});

describe('text of any sort', () => {
  it('is read as a finite number that is not negative, or refused with what the field takes', () => {
    const scraps = fc.constantFrom(
      '1',
      '9',
      '/',
      '-',
      ' ',
      '.',
      'e',
      'in',
      'ft',
      "'",
      '"',
      'lbf',
      '½',
      '(',
      ':',
      'NaN',
      '∞',
      '\u0000',
    );
    const text = fc.oneof(
      fc.string(),
      fc.string({ unit: 'binary' }),
      fc.array(scraps, { maxLength: 20 }).map((parts) => parts.join('')),
    );
    fc.assert(
      fc.property(text, fc.constantFrom(...kinds), (written, kind) => {
        const parsed = parseQuantity(written, kind);
        if (parsed.ok) expect(Number.isFinite(parsed.value) && parsed.value >= 0).toBe(true);
        else expect(parsed.message).toMatch(/ It takes an? .+\.$/s);
      }),
      { numRuns: 5000 },
    );
  });
});
