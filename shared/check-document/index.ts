export { type BracketShelfDocument, type BracketShelfInput } from './bracket-shelf.ts';
export { durations, type Duration } from './load.ts';
export { parseLimit, type Limit } from './limit.ts';
export { readDocument, documentSchema } from './read.ts';
export { DocumentError } from './document-error.ts';
export { readJson, type JsonReading } from './json-text.ts';
export { type SoundDocument } from './sound.ts';
