/**
 * An orthotropic thin plate on supports that push and screws that pull: choose a mesh, factor the free plate once, hold
 * it, put load after load on it, and read movement, moments and support forces. Shear deformation is left out (Kirchhoff); `shareOfShear` says how much it would add.
 */
export { plateMesh, type PlateOutline } from './plate-mesh.ts';
export { nodeOf, type PlateMesh } from './mesh.ts';
export { type PlateBeam, type PlateStiffness } from './stiffness.ts';
export { freePlate, type FreePlate } from './free-plate.ts';
export { lineSupports, type LinePlace, type SupportLine } from './line-supports.ts';
export { largestLineForce, linePartsOf, type LinePart } from './line-force.ts';
export { heldPlate, withSupports, type HeldPlate, type PlateSupport, type SharedGive } from './supports.ts';
export { movementAt, resultantOf, type PlateLoad, type Resultant } from './plate-load.ts';
export { shareOfShear, shearMembrane, type ShearMembrane } from './shear-membrane.ts';
export { standerOf, type PreparedLoad, type Stander, type Standing } from './standing.ts';
export { fieldOfStanding } from './standing-field.ts';
export { addedLoads, preparedLoad, solvePlate, tippingWords, type SolvedPlate } from './solve-plate.ts';
export { averagedMoment, momentAt, momentsOf, type MomentWay, type PlateMoments } from './moments.ts';
export { estimatedError } from './moment-error.ts';
