import type { JudgedEntry, JudgedFlight } from '../../contest/standing.ts';
import type { FigureSet } from '../../figures/figure.ts';
import type { Entry, Flight } from '../../model/entry.ts';
import type { ReadPhoto } from '../folder/content.ts';

/** A flight with its verdict and its figures. */
export interface FlightWithFigures {
  readonly flight: Flight;
  readonly judged: JudgedFlight;
  readonly figures: FigureSet;
}

/** An entry with its verdicts and figures. */
export interface EntryWithFigures {
  readonly entry: Entry;
  readonly judged: Pick<JudgedEntry, 'bestCounted' | 'bestProvisional'>;
  /** Figures of the model for every setup, in the entry's order. */
  readonly setupFigures: readonly FigureSet[];
  readonly flights: readonly FlightWithFigures[];
  readonly photos: readonly Pick<ReadPhoto, 'file' | 'hash'>[];
}
