import { stretchAtShare } from '../../src/rubber/stretch-energy.ts';
import { noiseFrom } from './noise.ts';
import { stressAt } from './stretch-log.ts';

/** A motor that unwound on the torque meter. */
export interface UnwoundMotor {
  readonly turns: number;
  readonly breakTurns: number;
  /** What it gave back altogether, in J. */
  readonly energy: number;
  readonly seed: number;
}

/** The log from wound to slack: turns still in, torque in N·mm. */
export function torqueLog(motor: UnwoundMotor): string {
  const noise = noiseFrom(motor.seed);
  const stretchAtBreak = 7.6;
  const step = 20;
  const turns = Array.from({ length: motor.turns / step + 1 }, (_, index) => motor.turns - index * step);
  // Torque follows the slope of the strands' energy over the turns; the scale makes the area the motor's energy.
  const shape = turns.map((each) => {
    const share = each / motor.breakTurns;
    const stretch = stretchAtShare(share, stretchAtBreak);
    return (stressAt(stretch) * share) / stretch;
  });
  let area = 0;
  for (let index = 1; index < shape.length; index++)
    area += ((shape[index - 1]! + shape[index]!) / 2) * step * 2 * Math.PI;
  const rows = turns.map((each, index) => {
    const torque = (motor.energy / area) * shape[index]! * 1000 * (1 + 0.01 * noise());
    return `${each},${torque.toFixed(1)}`;
  });
  return `turns,torque [N·mm]\n${rows.join('\n')}\n`;
}
