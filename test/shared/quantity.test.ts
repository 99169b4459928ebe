import { describe, expect, it } from 'vitest';
import { parseQuantity, showUsed, unitAdvice, unitsOfKind, type Kind } from '../../shared/quantity/index.ts';

/**
 * Definitions of the international yard and pound agreement of 1959, as NIST SP 811 (2008), appendix B, gives them in
 * bold (exact): 1 in = 0.0254 m, 1 lb = 0.45359237 kg, 1 lbf = 4.4482216152605 N, standard gravity 9.80665 m/s².
 */
const inch = 0.0254;
const foot = 0.3048;
const pound = 0.45359237;
const poundForce = 4.4482216152605;
const gravity = 9.80665;

function value(text: string, kind: Kind, bare?: string): number {
  const parsed = parseQuantity(text, kind, bare);
  if (!parsed.ok) throw new Error(`${text}: ${parsed.message}`);
  return parsed.value;
}

function refusal(text: string, kind: Kind, bare?: string): string {
  const parsed = parseQuantity(text, kind, bare);
  if (parsed.ok) throw new Error(`${text} was taken as ${parsed.value}`);
  return parsed.message;
}

describe('quantities as people write them', () => {
  it.each<[string, Kind, number]>([
    ['96 in', 'length', 96 * inch],
    ['3/4 in', 'length', 0.75 * inch],
    ['1-1/2 in', 'length', 1.5 * inch],
    ['1 1/2 in', 'length', 1.5 * inch],
    ['1 - 1/2 in', 'length', 1.5 * inch],
    ['1½ in', 'length', 1.5 * inch],
    ['9-1/4 in', 'length', 9.25 * inch],
    ['34-1/2 in', 'length', 34.5 * inch],
    ['8 ft', 'length', 8 * foot],
    ["8'", 'length', 8 * foot],
    ['8 ft 4-1/2 in', 'length', 100.5 * inch],
    ['8 ft 4 1/2 in', 'length', 100.5 * inch],
    ['8 ft 1/2 in', 'length', 96.5 * inch],
    ['8\'-4 1/2"', 'length', 100.5 * inch],
    ['8\' 4.5"', 'length', 100.5 * inch],
    ['8′ 4½″', 'length', 100.5 * inch],
    ["8' 4''", 'length', 100 * inch],
    ['2.4 m', 'length', 2.4],
    ['18 mm', 'length', 0.018],
    ['18mm', 'length', 0.018],
    ['24 cm', 'length', 0.24],
    ['.5 in', 'length', 0.5 * inch],
    ['2 yd', 'length', 2 * 0.9144],
    ['20 lbf/ft', 'line-load', (20 * poundForce) / foot],
    ['20 plf', 'line-load', (20 * poundForce) / foot],
    ['18 lbf/in', 'line-load', (18 * poundForce) / inch],
    ['350 N/m', 'line-load', 350],
    ['1.2 kN/m', 'line-load', 1200],
    ['12 kg/m', 'line-load', 12 * gravity],
    ['20 lb/ft', 'line-load', (20 * pound * gravity) / foot],
    ['25 psf', 'area-load', (25 * poundForce) / foot ** 2],
    ['0.72 kPa', 'area-load', 720],
    ['40 kg/m2', 'area-load', 40 * gravity],
    ['250 lbf', 'force', 250 * poundForce],
    ['22 lb', 'force', 22 * pound * gravity],
    ['1.2 kN', 'force', 1200],
    ['2 kip', 'force', 2000 * poundForce],
    ['10 kg', 'force', 10 * gravity],
    ['900 psi', 'stress', (900 * poundForce) / inch ** 2],
    ['6.2 MPa', 'stress', 6.2e6],
    ['400 lbf.in', 'couple', 400 * poundForce * inch],
    ['45 N.m', 'couple', 45],
    ['160 lb/ft3', 'density', (160 * pound) / foot ** 3],
    ['2500 kg/m3', 'density', 2500],
    ['3 lb', 'mass', 3 * pound],
    ['1.4 kg', 'mass', 1.4],
  ])('%s is read as a %s', (text, kind, expected) => {
    const read = value(text, kind);
    expect(Math.abs(read - expected)).toBeLessThanOrEqual(1e-12 * Math.abs(expected));
  });

  it('takes the unit printed beside the field for a bare number, and only then', () => {
    expect(value('8', 'length', 'in')).toBeCloseTo(8 * inch, 14);
    expect(value('18', 'length', 'mm')).toBeCloseTo(0.018, 14);
    expect(value('8 ft 4-1/2', 'length', 'in')).toBeCloseTo(100.5 * inch, 14);
    expect(value("8'-4 1/2", 'length', 'mm')).toBeCloseTo(100.5 * inch, 14);
    expect(value('38 mm', 'length', 'in')).toBeCloseTo(0.038, 14);
    expect(refusal('8', 'length')).toContain('has no unit');
  });

  it('reads every example of its own advice', () => {
    for (const kind of [
      'length',
      'force',
      'line-load',
      'area-load',
      'stress',
      'couple',
      'density',
      'mass',
    ] as const) {
      const examples = unitAdvice[kind].replace(/^.*such as /, '').split(/, | or /);
      expect(examples.length).toBeGreaterThan(1);
      for (const example of examples) expect(value(example, kind), example).toBeGreaterThan(0);
    }
  });
});

/** NIST SP 811 (2008), appendix B.8, seven figures as printed there (set down from memory of the table). */
const printed: [Kind, string, number][] = [
  ['stress', 'psi', 6.894757e3],
  ['stress', 'ksi', 6.894757e6],
  ['area-load', 'psf', 4.788026e1],
  ['force', 'kip', 4.448222e3],
  ['force', 'lbf', 4.448222],
  ['force', 'kg', 9.80665],
  ['line-load', 'lbf/ft', 1.45939e1],
  ['line-load', 'lbf/in', 1.751268e2],
  ['couple', 'lbf.ft', 1.355818],
  ['couple', 'lbf.in', 1.129848e-1],
  // The trade leaves the "force" out and writes either first.
  ['couple', 'ft-lb', 1.355818],
  ['couple', 'ft·lb', 1.355818],
  ['couple', 'ft lbs', 1.355818],
  ['couple', 'lb-ft', 1.355818],
  ['couple', 'lbf·ft', 1.355818],
  ['couple', 'foot-pounds', 1.355818],
  ['couple', 'in-lb', 1.129848e-1],
  ['couple', 'lb.in', 1.129848e-1],
  ['couple', 'inch pounds', 1.129848e-1],
  ['couple', 'N-m', 1],
  ['couple', 'N·m', 1],
  ['density', 'lb/ft3', 1.601846e1],
  ['density', 'g/cm3', 1e3],
  ['mass', 'oz', 2.834952e-2],
  ['mass', 'lb', 4.535924e-1],
  ['length', 'yd', 9.144e-1],
];

describe('conversion factors', () => {
  it.each(printed)('%s in %s agrees with the printed table', (kind, unit, factor) => {
    const ours = unitsOfKind[kind].get(unit) ?? NaN;
    expect(Math.abs(ours - factor)).toBeLessThanOrEqual(0.5e-6 * 10 ** Math.floor(Math.log10(factor)));
  });

  it('are the exact definitions, to the last bit, where these are finite decimals', () => {
    expect(unitsOfKind.length.get('in')).toBe(0.0254);
    expect(unitsOfKind.length.get('ft')).toBe(0.3048);
    expect(unitsOfKind.length.get('yd')).toBe(0.9144);
    expect(unitsOfKind.force.get('lbf')).toBe(4.4482216152605);
    expect(unitsOfKind.mass.get('lb')).toBe(0.45359237);
    expect(unitsOfKind.mass.get('oz')).toBe(0.028349523125);
  });

  it('give a pound of weight the same force as a pound-force', () => {
    for (const [mass, force, kind] of [
      ['lb', 'lbf', 'force'],
      ['lb/ft', 'lbf/ft', 'line-load'],
      ['lb/in', 'lbf/in', 'line-load'],
      ['lb/ft2', 'lbf/ft2', 'area-load'],
    ] as const) {
      const ratio = (unitsOfKind[kind].get(mass) ?? NaN) / (unitsOfKind[kind].get(force) ?? NaN);
      expect(Math.abs(ratio - 1)).toBeLessThan(1e-14);
    }
  });

  it('are all positive numbers', () => {
    for (const [kind, units] of Object.entries(unitsOfKind)) {
      for (const [unit, factor] of units) {
        expect(Number.isFinite(factor) && factor > 0, `${kind} ${unit}`).toBe(true);
      }
    }
  });
});

describe('what is refused', () => {
  it.each<[string, string, Kind, string]>([
    ['nothing', '', 'length', 'Nothing is written here.'],
    ['blanks', '   ', 'length', 'Nothing is written here.'],
    ['no unit', '96', 'length', '"96" has no unit.'],
    ['a unit of another kind', '96 lbf', 'length', '"lbf" is not a unit this field knows.'],
    ['a length for a load', '20 ft', 'line-load', '"ft" is not a unit this field knows.'],
    ['a force for a line load', '20 lbf', 'line-load', '"lbf" is not a unit this field knows.'],
    ['a unit nobody knows', '3 cubits', 'length', '"cubits" is not a unit this field knows.'],
    ['a unit alone', 'in', 'length', '"in" is not a quantity.'],
    ['a negative length', '-5 in', 'length', '"-5 in" is negative.'],
    ['a typographic minus', '−5 in', 'length', 'is negative.'],
    ['NaN', 'NaN in', 'length', '"NaN in" is not a quantity.'],
    ['Infinity', 'Infinity in', 'length', '"Infinity in" is not a quantity.'],
    ['a number past all numbers', '1e999 in', 'length', '"1e999 in" is not a finite number.'],
    ['division by nothing', '1/0 in', 'length', '"1/0 in" is not a finite number.'],
    ['nothing by nothing', '0/0 in', 'length', '"0/0 in" is not a finite number.'],
    ['a decimal comma', '2,4 m', 'length', 'has a comma'],
    ['a comma between thousands', '1,200 lbf', 'force', 'has a comma'],
    ['a lost hyphen after the feet', '8 ft 41/2 in', 'length', '12 inches or more after the feet'],
    ['a mixed number that is none', '1-9/8 in', 'length', 'a fraction of one or more'],
    ['a range of the expression language', '1:1e9', 'length', 'is not a unit'],
    ['a call', 'import({a:1}) in', 'length', 'is not a quantity.'],
    ['a conversion', '2 m to in', 'length', 'is not a unit'],
    ['a sum', '1 in + 1 in', 'length', 'is not a unit'],
    ['a product of units', '2 in in', 'length', 'is not a unit'],
    ['an inherited name', '2 constructor', 'length', '"constructor" is not a unit'],
    ['a prototype', '2 __proto__', 'length', '"__proto__" is not a unit'],
    ['markup', '<b>2</b> in', 'length', 'is not a quantity.'],
    ['two quantities', '2 in 3 in', 'length', 'is not a unit'],
    ['inches before feet', '3 in 2 ft', 'length', 'is not a unit'],
  ])('%s: %s', (_what, text, kind, why) => {
    const message = refusal(text, kind);
    expect(message).toContain(why);
    expect(message.endsWith(`It takes ${unitAdvice[kind]}.`)).toBe(true);
  });

  it.each([
    ['very long', `${'9'.repeat(100_000)} in`],
    ['digits and blanks', `${'1 '.repeat(30)}in`],
    ['digits and slashes', `${'1/'.repeat(31)}1`],
    ['dashes', `1${' - '.repeat(20)}1`],
    ['blanks', `1${' '.repeat(10_000_000)}in`],
    ['feet and feet', "1'".repeat(32)],
    ['points', '.'.repeat(64)],
  ])('%s text stays fast', (_what, text) => {
    const start = performance.now();
    expect(refusal(text, 'length').length).toBeLessThan(300);
    expect(performance.now() - start).toBeLessThan(1000);
  });
});

describe('how much is used', () => {
  it.each<[number | null, string]>([
    [0, '0 %'],
    [0.4349, '43 %'],
    [0.996, '99.6 %'],
    [0.9999, 'just under 100 %'],
    [1, '100 %'],
    [1 + 1e-12, 'just over 100 %'],
    [1.004, '100.4 %'],
    [1.23, '123 %'],
    [31.42, '3142 %'],
    [null, 'none'],
  ])('%s reads "%s"', (ratio, shown) => {
    expect(showUsed(ratio)).toBe(shown);
  });
});
