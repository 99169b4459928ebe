/*
 * Customary units in SI, exact by definition: NIST SP 811 (2008), Appendix B.8, and the international agreement of 1959.
 */
export const inch = 0.0254;
export const foot = 0.3048;
export const pound = 0.45359237;
export const poundForce = 0.45359237 * 9.80665;
export const psi = poundForce / inch ** 2;
export const ksi = 1000 * psi;
export const poundInch = poundForce * inch;
export const poundPerCubicFoot = pound / foot ** 3;
export const megapascal = 1e6;
