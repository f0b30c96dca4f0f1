import { noiseFrom } from './noise.ts';

/** A motor that ran out on the thrust rig, the model held still. */
export interface RunMotor {
  /** How long it pulled, in s. */
  readonly run: number;
  /** ∫T^1.5 dt that it reaches, in N^1.5·s. */
  readonly pull: number;
  /** Readings a second. */
  readonly rate: number;
  /** What the scale shows at rest, in g. */
  readonly drift: number;
  readonly seed: number;
}

const wait = 1;
const rest = 6;
const gramForce = 9.80665e-3;

/** The log with a second before release and some seconds after the run: time in s, thrust in gram-force. */
export function thrustLog(motor: RunMotor): string {
  const noise = noiseFrom(motor.seed);
  const count = Math.round((wait + motor.run + rest) * motor.rate);
  const times = Array.from({ length: count + 1 }, (_, index) => index / motor.rate);
  const shape = times.map((time) => pullAt((time - wait) / motor.run));
  const area = shape.reduce((sum, pull) => sum + pull ** 1.5 / motor.rate, 0);
  const scale = (motor.pull / area) ** (2 / 3);
  const rows = times.map((time, index) => {
    const pull = (scale * shape[index]!) / gramForce;
    const read = pull * (1 + 0.015 * noise()) + motor.drift + 0.15 * noise();
    return `${time.toFixed(2)}\t${read.toFixed(1)}`;
  });
  return `time [s]\tthrust [g]\n${rows.join('\n')}\n`;
}

/** Pull against the share of the run gone: a burst, a long slope, a quick end. */
function pullAt(share: number): number {
  if (share <= 0 || share >= 1) return 0;
  const rise = Math.min(1, share / 0.01);
  const end = Math.min(1, (1 - share) / 0.12);
  return rise * end ** 0.8 * (1.1 * Math.exp(-share / 0.1) + 1.25 - 0.75 * share);
}
