import type { CalendarDate } from '../../model/calendar.ts';
import type { FileHistory } from '../awaiting/handles-by-others.ts';

/** What is known of how a change came in. */
export interface HandedIn {
  /** The day on which it was handed in; null where only the moment of the look is known. */
  readonly on: CalendarDate | null;
  /** The handle of who hands it in, where the forge tells it. */
  readonly author: string | null;
  /** Who changed each file until now and with this change; null where there is no history to look at. */
  readonly files: readonly FileHistory[] | null;
  /** Files in which somebody now writes who had not written in them, while others had. */
  readonly byOthers: readonly string[];
  /** Changed files of the repository that are not of the content folder; none where nobody can tell. */
  readonly outside: readonly string[];
}
