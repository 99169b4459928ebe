/**
 * Formulas without a value from outside the project, by file and name, and why there is none. A formula that gets one
 * leaves this list.
 */
export const exceptions: Readonly<Record<string, string>> = {
  'calc/elements/bracket-formulas.ts ratingFromTest':
    "A quotient of two numbers of the bracket's maker; common practice, no source prints a case.",
  'calc/mechanics/box-formulas.ts skinAlong':
    'Fitted, on the safe side, to boxes of plates that meet along lines: test/reference/box-members.test.ts holds what comes of it.',
  'calc/mechanics/box-formulas.ts skinSheared':
    'Fitted, on the safe side, to boxes of plates that meet along lines: test/reference/box-members.test.ts holds what comes of it.',
  'calc/mechanics/box-formulas.ts skinTogether':
    'A plain sum of the stresses of a skin bent as a part of the box and by itself: the safe side.',
  'calc/mechanics/edge-strip-formulas.ts edgePatch':
    'Fitted, on the safe side, to plates loaded off their edge: test/reference/edge-strip.test.ts holds what comes of it.',
  'calc/mechanics/edge-strip-formulas.ts stripOverBracket':
    'Fitted, on the safe side, to plates on three brackets: test/reference/edge-strip.test.ts holds what comes of it.',
  'calc/mechanics/edge-strip-formulas.ts stripPastBracket':
    'Fitted, on the safe side, to plates with a free end: test/reference/edge-strip.test.ts holds what comes of it.',
  'calc/mechanics/section-formulas.ts edgeMovement':
    'A plain sum of two movements. Whether they may be summed is a question to the plate model, not to this formula.',
  'calc/mechanics/torsion-formulas.ts endTorque':
    'A plain sum of torques, each a load times its distance from the twist axis.',
  'calc/mechanics/torsion-formulas.ts shearOfAll':
    'A plain sum of the largest stresses, which are in different places of a section: the safe side.',
  'calc/mechanics/torsion-formulas.ts shearTogether':
    'A plain sum of the largest stresses, which are in different places of a section: the safe side.',
  'calc/standards/astm-d245/clear-wood.ts clearWoodBending':
    'The NDS prints no bending value that follows from one species alone: its tables group species, apply a size factor for 12 in depth and follow in-grade tests. The same product is checked in clearWoodShear.',
  'calc/standards/astm-d245/clear-wood.ts clearWoodTensionPerp':
    'No standard gives a design value for tension across the grain; the sheet says so each time.',
  'calc/standards/nds-2018/2.3-adjustment.ts adjustedTensionAcross':
    'NDS 3.8.2 gives no value to adjust; the factors are those of the other strengths, by analogy.',
};
