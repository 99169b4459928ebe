import { z } from 'zod';
import { choiceField, quantityField } from './field.ts';

/** Tile or stone on a panel. */
export const finishSchema = z
  .strictObject({
    kind: choiceField(['ceramic-tile', 'natural-stone'], 'What lies on the panel'),
    thickness: quantityField('length', { from: 0.003, to: 0.05 }, 'Thickness of the tile or stone'),
    bed: quantityField('length', { from: 0, to: 0.03 }, 'Thickness of mortar and backer under it').optional(),
  })
  .meta({ description: 'Tile or stone on a panel' });
