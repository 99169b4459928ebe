export { bracketDetail } from './bracket-detail.ts';
export { diagrams } from './diagrams.ts';
export { elevation } from './elevation.ts';
export { section } from './section.ts';
export { settingOut } from './setting-out.ts';
export type { View } from './frame.ts';
export { escaped, type Drawing } from './svg.ts';
