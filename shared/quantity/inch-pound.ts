/** One inch in m; exact (NIST SP 811, Appendix B). */
export const inch = 0.0254;
/** One foot in m; exact. */
export const foot = 0.3048;
/** One pound-force in N; exact. */
export const poundForce = 4.4482216152605;
/** One pound-force a square inch in Pa. */
export const psi = poundForce / (inch * inch);
