export { diagrams } from './diagrams.ts';
export { elevation } from './elevation.ts';
export { section } from './section.ts';
export type { View } from './frame.ts';
export { escaped, type Drawing } from './svg.ts';
