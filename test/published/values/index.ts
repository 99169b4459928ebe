import { clearWoodValues } from './clear-wood.ts';
import { connectionValues } from './connections.ts';
import { counterOverhangValues } from './counter-overhang.ts';
import { boxValues } from './box.ts';
import { edgeStripValues } from './edge-strip.ts';
import { eurocodeValues } from './eurocode-5.ts';
import { ndsValues } from './nds-2018.ts';
import { openSectionValues } from './open-section.ts';
import type { PublishedValue } from './published-value.ts';
import { sectionValues } from './sections.ts';
import { solidValues } from './solids.ts';
import { stabilityValues } from './stability.ts';
import { staticsValues } from './statics.ts';
import { steelValues } from './steel.ts';

export type { PublishedValue } from './published-value.ts';

/** Every value from outside the project that a formula is checked against. */
export const publishedValues: readonly PublishedValue[] = [
  ...clearWoodValues,
  ...connectionValues,
  ...counterOverhangValues,
  ...boxValues,
  ...edgeStripValues,
  ...eurocodeValues,
  ...ndsValues,
  ...openSectionValues,
  ...sectionValues,
  ...solidValues,
  ...stabilityValues,
  ...staticsValues,
  ...steelValues,
];
