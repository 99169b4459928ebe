export { foot, inch, poundForce, psi, standardGravity } from './exact.ts';
export { parseQuantity } from './parse.ts';
export { showUsed } from './used.ts';
export {
  calculationUnits,
  quantity,
  show,
  showEnd,
  showInCalculation,
  significant,
  type Quantity,
} from './show.ts';
export { writeLength, writeLoadDown, writeLoadUp } from './write.ts';
export {
  unitAdvice,
  unitAdviceMetric,
  unitOfKind,
  unitsOfKind,
  type Kind,
  type Unit,
  type UnitSystem,
} from './units.ts';
