/** For whom something is read or done: one office, and the name that history shows. */
export interface Actor {
  readonly officeId: string;
  /** Empty where nobody signs in. */
  readonly name: string;
}
