import { describe, expect, it } from 'vitest';
import { filledTex, symbolicTex } from '../../../server/typeset/expression.ts';
import { numberTex } from '../../../server/typeset/number.ts';
import { symbolTex } from '../../../server/typeset/symbol.ts';
import { math } from '../../units.ts';

const symbolic = (expression: string): string => symbolicTex(math.parse(expression)).replaceAll(/\s+/g, ' ');
const filled = (expression: string, numbers: Record<string, string>): string =>
  filledTex(
    math.parse(expression),
    new Map(Object.entries(numbers).map(([name, number]) => [name, { number, unit: '' }])),
  ).replaceAll(/\s+/g, ' ');

describe('names of symbols', () => {
  it.each([
    ['L', 'L'],
    ['f_b', 'f_{b}'],
    ['F_b_prime', "F_{b}'"],
    ['C_D', 'C_{D}'],
    ['f_c_perp', String.raw`f_{c\perp}`],
    ['F_c_perp_prime', String.raw`F_{c\perp}'`],
    ['sigma_m', String.raw`\sigma_{m}`],
    ['Delta_T', String.raw`\Delta_{T}`],
    ['K_theta', String.raw`K_{\theta}`],
    ['kappa', String.raw`\kappa`],
    ['K_cr', String.raw`K_{\mathrm{cr}}`],
    ['R_max_2', String.raw`R_{\mathrm{max},2}`],
    ['EI', String.raw`\mathit{EI}`],
    ['E_prime', "E'"],
  ])('%s is set as %s', (name, tex) => expect(symbolTex(name)).toBe(tex));

  it('refuses what is no name, so that no TeX command can come in by it', () => {
    expect(() => symbolTex(String.raw`f\href`)).toThrow('is not the name of a symbol');
    expect(() => symbolTex('f__b')).toThrow('is not the name of a symbol');
  });
});

describe('numbers', () => {
  it('sets a power of ten as a power of ten', () => {
    expect(numberTex('1.234e8').tex).toBe(String.raw`1.234 \times 10^{8}`);
    expect(numberTex('2e-5').tex).toBe(String.raw`2 \times 10^{-5}`);
  });

  it.each(['NaN', 'Infinity', 'undefined', '', '1,500', '1/2'])('refuses "%s"', (text) => {
    expect(() => numberTex(text)).toThrow('is not a number');
  });
});

describe('formulas with their symbols', () => {
  it.each([
    ['b*d^2/6', String.raw`\dfrac{b \, {d}^{2}}{6}`],
    ['(w*L^2)/(8*S)', String.raw`\dfrac{w \, {L}^{2}}{8 \, S}`],
    ['5*w*L^4/384/E/I', String.raw`\dfrac{5 \, w \, {L}^{4}}{384 \, E \, I}`],
    ['1.5*V/A', String.raw`\dfrac{1.5 \, V}{A}`],
    ['1 - 1.645*0.16', String.raw`1 - 1.645 \times 0.16`],
    ['F_b_prime^2', String.raw`{(F_{b}')}^{2}`],
    ['(a + b)*c', String.raw`(a + b) \, c`],
    ['a - (b - c)', String.raw`a - (b - c)`],
    ['2*(1/2)', String.raw`2 \, \left(\dfrac{1}{2}\right)`],
    ['-a^2', String.raw`-{a}^{2}`],
    ['(-a)^2', String.raw`{(-a)}^{2}`],
    ['a/b^2*c', String.raw`\dfrac{a}{{b}^{2}} \, c`],
    ['sqrt(a^2 + b^2)', String.raw`\sqrt{{a}^{2} + {b}^{2}}`],
    ['min(a, b/2)', String.raw`\min\left(a,\; \dfrac{b}{2}\right)`],
    ['abs(a - b)', String.raw`\left|a - b\right|`],
    ['(a + b)^(1/2)', String.raw`{(a + b)}^{1/2}`],
    ['3.141592653589793^2*E', String.raw`{\pi}^{2} \, E`],
    ['0.658^(F_y/F_e)', String.raw`{0.658}^{F_{y}/F_{e}}`],
    ['a^(b*c/(d + 1))', String.raw`{a}^{(b \, c)/(d + 1)}`],
    ['pow(a, 1.5)', String.raw`{a}^{1.5}`],
  ])('%s', (expression, tex) => expect(symbolic(expression)).toBe(tex));

  it('never puts a number straight before a fraction of numbers: 3 1/2 would read as three and a half', () => {
    expect(filled('a*(1/2)', { a: '3' })).toBe(String.raw`3 \, \left(\dfrac{1}{2}\right)`);
    expect(symbolic('3*1/2')).toBe(String.raw`\dfrac{3 \times 1}{2}`);
    expect(filled('a*x^2', { a: '3', x: '2' })).toBe(String.raw`3 \times {(2)}^{2}`);
  });

  it.each(['a < b', 'a ! ', 'a and b', 'f(a)', 'a ? b : c', '[a, b]'])('refuses %s', (expression) => {
    expect(() => symbolic(expression)).toThrow();
  });
});

describe('formulas with numbers put in', () => {
  it('keeps the fraction and multiplies by a sign', () => {
    expect(filled('b*d^2/6', { b: '9.25', d: '0.75' })).toBe(String.raw`\dfrac{9.25 \times {(0.75)}^{2}}{6}`);
  });

  it('sets a negative number and a power of ten in parentheses where they would be misread', () => {
    expect(filled('a - b', { a: '2', b: '-3' })).toBe(String.raw`2 - (-3)`);
    expect(filled('a*b', { a: '-2', b: '1.2e6' })).toBe(String.raw`(-2) \times (1.2 \times 10^{6})`);
    expect(filled('a - b*c', { a: '2', b: '-3', c: '4' })).toBe(String.raw`2 - (-3) \times 4`);
    expect(filled('b^2', { b: '1.2e6' })).toBe(String.raw`{(1.2 \times 10^{6})}^{2}`);
  });

  it('fails on a symbol without a number', () => {
    expect(() => filled('a*b', { a: '2' })).toThrow('No number stands for b');
  });
});
