export { bracketShelfSchema, type BracketShelfDocument, type BracketShelfInput } from './bracket-shelf.ts';
export { wallFixingSchema, type WallFixingDocument, type WallFixingInput } from './wall-fixing.ts';
export {
  counterOverhangSchema,
  type CounterOverhangDocument,
  type CounterOverhangInput,
} from './counter-overhang.ts';
export { counterRunSchema, type CounterRunDocument, type CounterRunInput } from './counter-run.ts';
export { shelfPaths, wallFixingPaths, type FixingPaths, type SoundFixing } from './fixing-conflicts.ts';
export { durations, loadsSchema, type Duration } from './load.ts';
export { parseLimit, type Limit } from './limit.ts';
export {
  readDocument,
  readShelfDocument,
  documentSchema,
  type CheckDocument,
  type WallDocument,
} from './read.ts';
export { DocumentError } from './document-error.ts';
export { readJson, type JsonReading } from './json-text.ts';
export {
  type SoundCounterOverhang,
  type SoundDocument,
  type SoundShelf,
  type SoundWallFixing,
} from './sound.ts';
