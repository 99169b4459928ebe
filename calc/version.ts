/** Version of the tool and of its tables, printed on every sheet. */
export const version = '0.3.0';
