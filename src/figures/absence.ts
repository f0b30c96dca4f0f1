/** Thrown inside a figure that cannot be worked out and caught by the evaluation; outside of it absence is data. */
export class Absence {
  readonly reason: string;

  constructor(reason: string) {
    this.reason = reason;
  }
}
