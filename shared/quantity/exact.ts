/** One inch in m; exact (NIST SP 811, Appendix B). */
export const inch = 0.0254;
/** One foot in m; exact. */
export const foot = 0.3048;
/** One pound-force in N; exact. */
export const poundForce = 4.4482216152605;
/** One pound of mass in kg; exact. */
export const pound = 0.45359237;
/** One ounce of mass in kg; exact. */
export const ounce = pound / 16;
/** Standard gravity, m/s²; exact. A weight given in pounds or kilograms is this times its mass. */
export const standardGravity = 9.80665;
/** One pound-force a square inch in Pa. */
export const psi = poundForce / (inch * inch);
