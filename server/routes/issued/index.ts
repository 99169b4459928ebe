import type { Action } from '../../visits/action.ts';
import { issue, showIssue, type IssuedDesk } from './issue.ts';
import { issuedSheetActions } from './sheet.ts';

/** Everything that people of an office can ask for about issued sheets. There is nothing that changes one. */
export function issuedActions(desk: IssuedDesk): Action[] {
  return [showIssue(desk), issue(desk), ...issuedSheetActions(desk)];
}
