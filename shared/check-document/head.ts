import { z } from 'zod';
import { choiceField, textField } from './field.ts';

const aDay = 'It takes a day of the calendar, such as 2026-03-14.';

/** What every check document says about itself, whatever it checks. */
export const headSchema = {
  schema: z.literal(1, { error: 'It takes the number 1, the version of this document.' }),
  title: textField(120, 'What the check is called').optional(),
  date: z
    .string({ error: aDay })
    .check(z.iso.date({ error: aDay }))
    .optional()
    .meta({ description: 'Date to print on the sheet' }),
  preparedBy: textField(80, 'Who prepared the check').optional(),
  checkedBy: textField(80, 'Who checked it').optional(),
  code: choiceField(['nds-asd'], 'The code of practice: NDS, allowable stress design').optional(),
  units: choiceField(['inch-pound', 'metric'], 'Units in which results are shown').optional(),
  conditions: z
    .strictObject({
      moisture: choiceField(['dry', 'wet'], 'Moisture in service: dry is 19 % or less').optional(),
      temperature: choiceField(['ordinary', 'warm', 'hot'], 'Up to 100 °F, to 125 °F, to 150 °F').optional(),
    })
    .optional(),
};
