export { bracketShelfSchema, type BracketShelfDocument, type BracketShelfInput } from './bracket-shelf.ts';
export { appearances, bases } from './board.ts';
export { durations, loadKinds, thingSchema, type Duration } from './load.ts';
export { parseLimit, type Limit } from './limit.ts';
export { readDocument, documentSchema, elementNames, type Reading } from './read.ts';
export { DocumentError } from './document-error.ts';
export { readJson, type JsonReading } from './json-text.ts';
export { type SoundDocument } from './sound.ts';
