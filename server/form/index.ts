export { act } from './act.ts';
export { wayOf } from './alternatives.ts';
export { bareUnits, withUnit } from './bare-units.ts';
export { fillForm } from './fill-form.ts';
export { readForm, type FormReading } from './read-form.ts';
export { withStarts } from './starts.ts';
export { switchUnits } from './switch-units.ts';
export { queryOf, rowsOf, textsOf, written, writtenParts, type Texts } from './texts.ts';
export { unknownNames } from './unknown-names.ts';
