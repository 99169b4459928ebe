import { check } from '../../calc/index.ts';
import { demoCheck } from '../../server/demo.ts';
import type { BracketShelfInput } from '../../shared/check-document/index.ts';

/** The exit code that the interface gives each verdict of the library. */
export function codeFor(document: unknown): number {
  return { holds: 0, 'does-not-hold': 1, 'cannot-say': 3 }[check(document).verdict];
}

/** Little asked of it: the demo with a tenth of what stands on it. */
export const light: BracketShelfInput = {
  ...demoCheck,
  loads: [{ name: 'Plates', kind: 'line', amount: '2 lbf/ft', duration: 'permanent' }],
};

/** Far past everything: a ton on each foot. */
export const heavy: BracketShelfInput = {
  ...demoCheck,
  loads: [{ name: 'Anvils', kind: 'line', amount: '2000 lbf/ft', duration: 'permanent' }],
};

/** Nothing fails, but what the brackets carry is not known. */
export const unknown: BracketShelfInput = {
  ...light,
  brackets: { ...light.brackets, capacity: { basis: 'unknown' } },
};

/** Three errors. */
export const bad = {
  ...demoCheck,
  board: { ...demoCheck.board, length: '96', thickness: '3 lbf' },
  limits: 3,
};

/** Fails by its thin steel arms alone, set on edge, for which no change is known. */
export const barred: BracketShelfInput = onBars('1/8 in');

/** On bars on edge that leave enough beside the holes. */
export const edged: BracketShelfInput = onBars('3/8 in');

function onBars(width: string): BracketShelfInput {
  const { plate } = demoCheck.brackets;
  return {
    ...demoCheck,
    brackets: {
      ...demoCheck.brackets,
      arm: '9 in',
      armWidth: width,
      hold: 'screwed',
      ...(plate !== undefined && { plate: { ...plate, thickness: '1/2 in' } }),
      capacity: { basis: 'steel', metal: 'a36', width, thickness: '1-1/2 in' },
    },
  };
}
