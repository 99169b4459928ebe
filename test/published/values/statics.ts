import * as bracket from '../../../calc/elements/bracket-formulas.ts';
import { spanFraction } from '../../../calc/mechanics/section-formulas.ts';
import * as closed from '../../../calc/standards/beam-tables/closed-forms.ts';
import { published, type PublishedValue } from './published-value.ts';
import { foot, inch, poundForce, psi } from './units.ts';

const aisc = (table: string) => ({ source: `AISC Manual, 15th ed., ${table}`, memory: true });
const exact = { tolerance: 1e-9, why: 'exact' };

/** Where two supports stand so that the moments over them and between them are alike, and that moment over w L². */
const twoPoints = { overhang: 0.2071, span: 0.5858, moment: 0.02145 };
const lifting = {
  tolerance: 6e-4,
  source: 'PCI Design Handbook, two-point lifting: supports at 0.207 of the length, moments ± 0.0214 w L²',
  why: 'four figures, from memory, of (3 − 2√2) / 8',
  memory: true,
};

const balanced: PublishedValue[] = [
  published(closed.overhangMoment, { w: 1, a: twoPoints.overhang }, twoPoints.moment, lifting),
  published(
    closed.middleMoment,
    { w: 1, L: twoPoints.span, M_A: twoPoints.moment, M_B: twoPoints.moment },
    twoPoints.moment,
    { ...lifting, tolerance: 2e-3, why: 'a difference of twice as large numbers of four figures' },
  ),
];

/** A span held at both ends is a simple span with w L² / 12 over each end. */
const held = { w: 1200, L: 2, M_A: 400, M_B: 400, EI: 1e4 };
/** A span held at one end: w L² / 8 over it. */
const propped = { w: 800, L: 2, M_A: 400, M_B: 0, EI: 1e4 };

const singleSpans: PublishedValue[] = [
  published(closed.middleMoment, held, (1200 * 2 ** 2) / 24, {
    ...exact,
    ...aisc('Table 3-23, case 15: wl²/24 in the middle'),
  }),
  published(closed.middleMoment, propped, (800 * 2 ** 2) / 16, {
    ...exact,
    ...aisc('Table 3-23, case 12: wl²/16 in the middle'),
  }),
  published(closed.middleMovement, held, (1200 * 2 ** 4) / (384 * 1e4), {
    ...exact,
    ...aisc('Table 3-23, case 15: wl⁴/384EI'),
  }),
  published(closed.middleMovement, propped, (800 * 2 ** 4) / (192 * 1e4), {
    ...exact,
    ...aisc('Table 3-23, case 12: wx(l³ − 3lx² + 2x³)/48EI, at the middle wl⁴/192EI'),
  }),
  published(closed.middleMovement, { ...propped, M_A: 0, M_B: 400 }, (800 * 2 ** 4) / (192 * 1e4), {
    ...exact,
    ...aisc('Table 3-23, case 12, from the other end'),
  }),
];

/** Thickness in, E psi, load psf, printed longest span in. */
const shelfSpans: readonly (readonly [string, number, number, number, number])[] = [
  ['3/4 in plywood, Douglas-fir', 0.75, 0.95e6, 40, 40],
  ['3/4 in plywood, Douglas-fir', 0.75, 0.95e6, 50, 37],
  ['1 in plywood, Douglas-fir', 1, 0.95e6, 40, 53],
  ['1 in plywood, Douglas-fir', 1, 0.95e6, 50, 49],
  ['3/4 in northern red oak', 0.75, 1.82e6, 40, 49],
  ['3/4 in northern red oak', 0.75, 1.82e6, 50, 46],
  ['1 in northern red oak', 1, 1.82e6, 40, 66],
  ['1 in northern red oak', 1, 1.82e6, 50, 61],
];

const shelves: PublishedValue[] = shelfSpans.map(([what, thickness, E, load, span]) =>
  published(
    closed.middleMovement,
    {
      w: (load * poundForce) / foot ** 2,
      L: span * inch,
      EI: (E * psi * (thickness * inch) ** 3) / 12,
      M_A: 0,
      M_B: 0,
    },
    (span * inch) / 144,
    {
      tolerance: (3.2 * 0.7) / span,
      source: `Architectural Woodwork Standards, ed. 1 (2009), longest shelf spans: ${what}, ${load} psf, L/144, for 1 ft of depth`,
      why: 'spans are printed to whole inches, mostly cut off, and movement over span grows as the cube of the span',
      memory: false,
    },
  ),
);

const joist = {
  L: 4.5,
  EI: (11_000e6 * 0.075 * 0.2 ** 3) / 12,
  GA: (690e6 * 0.075 * 0.2 * 5) / 6,
  M_A: 0,
  M_B: 0,
};
const joistSource =
  'Benoit, Legrand, Tastet, Calcul de structures en bois (2008), example 2.3.1: C24, 75 × 200 mm, 4.5 m, shear factor 5/6';

const withShear: PublishedValue[] = [
  published(closed.middleMovementWithShear, { ...joist, w: 750 }, 7.501e-3, {
    tolerance: 1e-4,
    source: joistSource,
    why: 'printed to 0.001 mm',
    memory: false,
  }),
  published(closed.middleMovementWithShear, { ...joist, w: 1000 }, 10.001e-3, {
    tolerance: 1e-4,
    source: joistSource,
    why: 'printed to 0.001 mm',
    memory: false,
  }),
  published(
    closed.middleMovementWithShear,
    { ...held, GA: 6e4 },
    (1200 * 2 ** 4) / (384 * 1e4) + (1200 * 2 ** 2) / (8 * 6e4),
    {
      ...exact,
      source:
        'Wood Handbook FPL-GTR-282, ch. 9, Eq. 9-1: uniform load, both ends held, k_b 1/384, and k_s 1/8 as for ends simply held',
      memory: true,
    },
  ),
];

/** Equal spans, all loaded: over the first inner support and at the end, as the table prints and as fractions. */
const equalSpans: readonly (readonly [2 | 3 | 4, string, number, string, number])[] = [
  [2, '1/8', 1 / 8, '3/8', 3 / 8],
  [3, '1/10', 1 / 10, '4/10', 4 / 10],
  [4, '3/28', 3 / 28, '11/28', 11 / 28],
];

const continuous: PublishedValue[] = [
  ...equalSpans.flatMap(([spans, moment, c_M, reaction, c_R]) => [
    published(closed.equalBaysMoment, { c_M: closed.equalBays[spans].moment, w: 300, L: 2 }, c_M * 300 * 4, {
      ...aisc(`Table 3-22c, ${spans} equal spans all loaded: ${moment} wl²`),
      tolerance: 5e-4,
      why: 'the table prints four figures',
    }),
    published(
      closed.equalBaysReaction,
      { c_R: closed.equalBays[spans].reaction, w: 300, L: 2 },
      c_R * 300 * 2,
      {
        ...aisc(`Table 3-22c, ${spans} equal spans all loaded: ${reaction} wl`),
        tolerance: 5e-4,
        why: 'the table prints three figures',
      },
    ),
  ]),
  published(closed.threeMoments, { w: 300, L_l: 2, L_r: 2, M_l: 0, M_r: 0.0714 * 1200 }, 0.1071 * 1200, {
    ...exact,
    ...aisc('Table 3-22c, four equal spans all loaded: 0.1071 and 0.0714 wl²'),
    tolerance: 1e-3,
    why: 'the table prints four figures',
  }),
  published(closed.threeMoments, { w: 300, L_l: 2, L_r: 4, M_l: 0, M_r: 0 }, (300 * (8 + 64)) / (8 * 6), {
    ...exact,
    ...aisc('Table 3-23, two unequal spans, uniform load: w (l₁³ + l₂³) / 8 (l₁ + l₂)'),
  }),
  published(closed.threeMoments, { w: 6, L_l: 2, L_r: 4, M_l: 5, M_r: 7 }, (108 - 10 - 28) / 12, {
    ...exact,
    source: 'worked by hand',
    memory: false,
    why: '(6 × 72 / 4 − 5 × 2 − 7 × 4) / (2 × 6)',
  }),
  published(closed.threeBaysMoment, { w: 300, L_1: 2, L_2: 2, M_A: 0 }, 0.1 * 300 * 4, {
    ...exact,
    ...aisc('Table 3-22c, three equal spans all loaded: 0.100 wl²'),
  }),
  published(closed.threeBaysMoment, { w: 300, L_1: 2, L_2: 2, M_A: 100 }, 100, {
    ...exact,
    ...aisc('Table 3-23, case 15: held ends have wl²/12, and so has every support of equal spans then'),
  }),
  published(closed.threeBaysMoment, { w: 300, L_1: 2, L_2: 1e-9, M_A: 0 }, (300 * 4) / 8, {
    ...exact,
    ...aisc('Table 3-23, case 12: with no span between them, the two inner supports hold the beam: wl²/8'),
    tolerance: 1e-6,
    why: 'the inner span is not quite nothing',
  }),
];

/** NIST SP 811 (2008), Appendix B.8: pound-force inch and pound-force foot in N·m, seven figures. */
const nist = { tolerance: 5e-7, memory: true, why: 'printed to seven figures' };

const levers: PublishedValue[] = [
  published(bracket.couple, { R: poundForce, e_R: inch }, 0.1129848, {
    ...nist,
    source: 'NIST SP 811 (2008), Appendix B.8: pound-force inch',
  }),
  published(bracket.ratedCouple, { P_r: poundForce, e_r: foot }, 1.355818, {
    ...nist,
    source: 'NIST SP 811 (2008), Appendix B.8: pound-force foot',
  }),
  published(bracket.restoring, { D: 10 * poundForce, a: 4 * inch, x_D: 3 * inch }, 6 * 0.1129848, {
    ...nist,
    source: 'ASCE 7, 2.4.1: 0.6 D; NIST SP 811 (2008), Appendix B.8: pound-force inch',
  }),
  published(bracket.armBetween, { R: 100, e_M: (2 * (4 - 2)) / 4 }, (100 * 4) / 4, {
    ...exact,
    ...aisc('Table 3-23, case 7: Pl/4 with the load in the middle'),
  }),
  published(bracket.armBetween, { R: 100, e_M: (3 * (9 - 3)) / 9 }, (2 * 100 * 9) / 9, {
    ...exact,
    ...aisc('Table 3-23, case 8: at a third of the span, 2Pl/9'),
  }),
  published(bracket.armInFront, { R: 100, e_M: 3 - 1 }, 100 * 2, {
    ...exact,
    ...aisc('Table 3-23, case 22: Pl at the fixed end'),
  }),
  published(bracket.armPull, { C: 400, h: 3 }, (100 * 4) / 3, {
    ...exact,
    source:
      'any text on statics: triangle of forces 3 : 4 : 5, 100 N where arm and strut meet, 4 m from the wall',
    memory: true,
  }),
  published(bracket.prisedLift, { n_s: 2, C_u: 10, x_f: 0.2, S_x: 0.05, C_t: 4, l_f: 0.2, S_l: 0.05 }, 80, {
    ...exact,
    source:
      'any text on statics: moments about an end. Screws at 0.1 and 0.2 m of an arm of 0.3 m: 10 × 0.2 / 0.05 on the farther one, more than 4 × 0.2 / 0.05 on the nearer',
    memory: true,
  }),
  published(bracket.prisedLift, { n_s: 2, C_u: 1, x_f: 0.2, S_x: 0.05, C_t: 4, l_f: 0.2, S_l: 0.05 }, 32, {
    ...exact,
    source:
      'any text on statics: moments about an end. Screws at 0.1 and 0.2 m of an arm of 0.3 m: 4 × 0.2 / 0.05 on the nearer one, more than 1 × 0.2 / 0.05 on the farther',
    memory: true,
  }),
  published(bracket.boardScrewPull, { C_f: 100 * 0.5, a: 2.5, x_s: 0.5 }, (100 * 0.5) / 2, {
    ...exact,
    ...aisc('Table 3-23, case 26: a load at the end of an overhang lifts the far support by Pa/l'),
  }),
  published(bracket.screwsTogether, { n_s: 3, T_1: 40 }, 120, {
    ...exact,
    source: 'worked by hand: three screws of 40 N each',
    memory: false,
  }),
  published(bracket.handMoment, { P: 300, l_P: 2 }, 600, {
    ...exact,
    ...aisc('Table 3-23, case 22: Pl'),
  }),
  published(bracket.noseMoment, { R: 2 * 150, l_R: 1 }, (150 * 2 ** 2) / 2, {
    ...exact,
    ...aisc('Table 3-23, case 19: wl²/2'),
  }),
  published(bracket.memberLoad, { R: 90, k_R: 1 / 3, C_m: 12, k_C: 2.5 }, 60, {
    source: 'worked by hand: three members 0.2 m apart, bolts of one size: R / 3 + C y / Σ y²',
    why: '30 + 12 × 0.2 / 0.08',
    memory: false,
    tolerance: 1e-9,
  }),
  published(
    bracket.skinMoment,
    { q: 8, s: 2, S_n: 3, P: 60, c: 1 },
    (8 * 2 ** 2) / 8 + 3 + (30 * (0.5 + 30 / (2 * 60))) / 3,
    {
      ...exact,
      ...aisc(
        'Table 3-23, case 1: wl²/8; case 4, partly spread: R1 (a + R1 / 2w) with R1 30, a 0.5 and w 60 on 1 in the middle of 2: 30 × (0.5 + 0.25); over a width of 3',
      ),
    },
  ),
  published(spanFraction, { L_s: 36 * inch, n_L: 144 }, 0.25 * inch, {
    ...exact,
    source: 'Architectural Woodwork Standards, ed. 1 (2009), section 10: L/144, a quarter inch in three feet',
    memory: true,
  }),
];

export const staticsValues: readonly PublishedValue[] = [
  ...balanced,
  ...singleSpans,
  ...shelves,
  ...withShear,
  ...continuous,
  ...levers,
];
