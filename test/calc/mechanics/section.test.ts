import { describe, expect, it } from 'vitest';
import {
  bondedSection,
  firstMomentsOf,
  levelCuts,
  shearFlowPerForce,
  stressPerMoment,
  torsionOfRectangle,
  worstCorner,
  type Part,
} from '../../../calc/mechanics/section.ts';
import { effectiveStiffness } from '../../../calc/mechanics/section-formulas.ts';

const E = 12e9;
const part = (name: string, y: number, width: number, z: number, height: number, E_Pa = E): Part => ({
  name,
  y_m: y,
  width_m: width,
  z_m: z,
  height_m: height,
  E_Pa,
});

/** A board 235 × 19 with a strip 19 × 38 on its front edge, flush with its top. */
const board = part('board', 0, 0.235, 0.019, 0.019);
const strip = part('nosing', 0.235, 0.019, 0, 0.038);
const angle = [board, strip];

/** The same by principal axes: rotate until the product term is nil, bend about each, and add. Shares no formula. */
function byPrincipalAxes(parts: readonly Part[]) {
  const area = parts.reduce((sum, p) => sum + p.width_m * p.height_m, 0);
  const mean = (pick: (p: Part) => number): number =>
    parts.reduce((sum, p) => sum + p.width_m * p.height_m * pick(p), 0) / area;
  const [y0, z0] = [mean((p) => p.y_m + p.width_m / 2), mean((p) => p.z_m + p.height_m / 2)];
  let [Iyy, Izz, Iyz] = [0, 0, 0];
  for (const p of parts) {
    const [b, h] = [p.width_m, p.height_m];
    const [y, z] = [p.y_m + b / 2 - y0, p.z_m + h / 2 - z0];
    Iyy += (b * h ** 3) / 12 + b * h * z * z;
    Izz += (h * b ** 3) / 12 + b * h * y * y;
    Iyz += b * h * y * z;
  }
  const turn = Math.atan2(-2 * Iyz, Iyy - Izz) / 2;
  const [c, s] = [Math.cos(turn), Math.sin(turn)];
  const I1 = Iyy * c * c + Izz * s * s - 2 * Iyz * s * c;
  const I2 = Iyy * s * s + Izz * c * c + 2 * Iyz * s * c;
  /** Stress at a point under a unit moment about the level axis. */
  const stress = (y: number, z: number): number => {
    const [u, v] = [(y - y0) * c + (z - z0) * s, -(y - y0) * s + (z - z0) * c];
    return Math.abs((c * v) / I1 + (s * u) / I2);
  };
  return { stress, effective: 1 / ((c * c) / I1 + (s * s) / I2) };
}

describe('an L-shaped section bends about inclined axes', () => {
  const section = bondedSection(angle);
  const principal = byPrincipalAxes(angle);

  it('stiffness as by principal axes', () => {
    const EI = effectiveStiffness.evaluate({
      EI_x: section.EIx_Nm2,
      EI_xy: section.EIxy_Nm2,
      EI_y: section.EIy_Nm2,
    });
    expect(EI / E / principal.effective).toBeCloseTo(1, 10);
  });

  it.each(angle.map((each) => [each.name, each] as const))(
    'stress at the worst corner of the %s as by principal axes',
    (_, each) => {
      const corners = [each.y_m, each.y_m + each.width_m].flatMap((y) =>
        [each.z_m, each.z_m + each.height_m].map((z) => principal.stress(y, z)),
      );
      const found = Math.abs(stressPerMoment(section, each, worstCorner(section, each)));
      expect(found / Math.max(...corners)).toBeCloseTo(1, 10);
    },
  );

  it('the plain M y / I would put the back corner of the board too low by a tenth and more', () => {
    const plain =
      Math.max(...[board.z_m, board.z_m + board.height_m].map((z) => Math.abs(z - section.centroidZ_m))) /
      (section.EIx_Nm2 / E);
    const back = Math.max(
      principal.stress(board.y_m, board.z_m),
      principal.stress(board.y_m, board.z_m + board.height_m),
    );
    expect(back / plain).toBeGreaterThan(1.1);
  });

  it('turns into the plain section where there is no product term', () => {
    const plain = bondedSection([part('board', 0, 0.2, 0, 0.02)]);
    expect(plain.EIx_Nm2).toBeCloseTo((E * 0.2 * 0.02 ** 3) / 12, 6);
    expect(plain.EIxy_Nm2).toBe(0);
  });
});

describe('two materials: transformed section by hand', () => {
  it('a skin twice as stiff counts twice as wide (Wood Handbook ch. 9; any text on composite beams)', () => {
    const parts = [part('core', 0, 0.1, 0, 0.03, 8e9), part('skin', 0, 0.1, 0.03, 0.01, 16e9)];
    const section = bondedSection(parts);
    const middle = (0.1 * 0.03 * 0.015 + 0.2 * 0.01 * 0.035) / (0.1 * 0.03 + 0.2 * 0.01);
    const I =
      (0.1 * 0.03 ** 3) / 12 +
      0.1 * 0.03 * (middle - 0.015) ** 2 +
      (0.2 * 0.01 ** 3) / 12 +
      0.2 * 0.01 * (0.035 - middle) ** 2;
    expect(section.centroidZ_m).toBeCloseTo(middle, 12);
    expect(section.EIx_Nm2 / (8e9 * I)).toBeCloseTo(1, 12);
    const [, skin] = parts;
    if (skin === undefined) throw new Error('no skin');
    expect(
      Math.abs(stressPerMoment(section, skin, worstCorner(section, skin))) / ((2 * (0.04 - middle)) / I),
    ).toBeCloseTo(1, 12);
  });
});

describe('shear', () => {
  it('a rectangle: 1.5 V / A at mid-height', () => {
    const section = bondedSection([part('board', 0, 0.2, 0, 0.02)]);
    const most = Math.max(...levelCuts(section).map((cut) => shearFlowPerForce(section, cut) / cut.width_m));
    expect(most / (1.5 / (0.2 * 0.02))).toBeCloseTo(1, 9);
  });

  it('the flow across a glue line is how fast the force in the part it holds grows: dN/dx for a unit shear', () => {
    const section = bondedSection(angle);
    /** Force in the strip for a unit moment, from the stresses by principal axes at its four corners (linear: their mean). */
    const { EIx_Nm2: x, EIy_Nm2: y, EIxy_Nm2: xy } = section;
    const stressAt = (yy: number, zz: number): number => (E * (y * zz - xy * yy)) / (x * y - xy * xy);
    const middle = stressAt(
      strip.y_m + strip.width_m / 2 - section.centroidY_m,
      strip.z_m + strip.height_m / 2 - section.centroidZ_m,
    );
    const force = Math.abs(middle) * strip.width_m * strip.height_m;
    expect(shearFlowPerForce(section, firstMomentsOf(section, [1])) / force).toBeCloseTo(1, 10);
  });

  it.each([
    ['flush top', angle],
    ['a high strip', [board, part('nosing', 0.235, 0.019, -0.052, 0.09)]],
    ['flush bottom', [board, part('nosing', 0.235, 0.019, 0.019, 0.04)]],
    ['a narrow board', [part('board', 0, 0.06, 0.03, 0.012), part('nosing', 0.06, 0.03, 0, 0.042)]],
    ['a strip of stiffer wood', [board, part('nosing', 0.235, 0.019, 0, 0.038, 3 * E)]],
  ])('no level of an L-shaped section is sheared more than the levels that are judged: %s', (_, parts) => {
    const section = bondedSection(parts);
    const { EIx_Nm2: x, EIy_Nm2: y, EIxy_Nm2: xy } = section;
    const judged = Math.max(
      ...levelCuts(section).map((cut) => shearFlowPerForce(section, cut) / cut.width_m),
    );
    const bottom = Math.min(...parts.map((p) => p.z_m));
    const top = Math.max(...parts.map((p) => p.z_m + p.height_m));
    let most = 0;
    for (let k = 1; k < 2000; k++) {
      const z = bottom + ((top - bottom) * k) / 2000;
      let [Qx, Qy, width] = [0, 0, 0];
      for (const p of parts) {
        const above = Math.max(0, Math.min(p.height_m, p.z_m + p.height_m - z));
        const force = p.E_Pa * p.width_m * above;
        Qx += force * (p.z_m + p.height_m - above / 2 - section.centroidZ_m);
        Qy += force * (p.y_m + p.width_m / 2 - section.centroidY_m);
        if (z > p.z_m && z < p.z_m + p.height_m) width += p.width_m;
      }
      most = Math.max(most, Math.abs(y * Qx - xy * Qy) / (x * y - xy * xy) / width);
    }
    expect(judged).toBeGreaterThanOrEqual(most * (1 - 1e-6));
  });
});

describe('torsion of a solid rectangle', () => {
  /** Timoshenko and Goodier, Theory of Elasticity, table of k₁: J = k₁ b t³ (from memory). Roark's formula is within 0.5 %. */
  it.each([
    [1, 0.141],
    [1.5, 0.196],
    [2, 0.229],
    [3, 0.263],
    [4, 0.281],
    [5, 0.291],
    [10, 0.312],
  ])('b / t = %d: k = %d', (b, k) => {
    expect(Math.abs(torsionOfRectangle(b, 1) / b / k - 1)).toBeLessThan(0.005);
    expect(torsionOfRectangle(1, b)).toBe(torsionOfRectangle(b, 1));
  });
});
