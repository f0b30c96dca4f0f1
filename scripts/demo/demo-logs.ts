import { stretchLog } from './stretch-log.ts';
import { thrustLog } from './thrust-log.ts';
import { torqueLog } from './torque-log.ts';

/** Every log of the demo, by its place in the content folder. */
export const demoLogs: Readonly<Record<string, () => string>> = {
  'rubber/loft-a-1.csv': () =>
    stretchLog({ length: 100, mass: 0.31, top: 7.3, stiffness: 1.24, loss: 0.205, seed: 11 }),
  'rubber/loft-a-2.csv': () =>
    stretchLog({ length: 100, mass: 0.31, top: 7.5, stiffness: 1.17, loss: 0.2, seed: 12 }),
  'rubber/loft-b-1.csv': () =>
    stretchLog({ length: 100, mass: 0.46, top: 7.4, stiffness: 1.25, loss: 0.245, seed: 13 }),
  'rubber/loft-b-2.csv': () =>
    stretchLog({ length: 100, mass: 0.47, top: 7.4, stiffness: 1.22, loss: 0.25, seed: 14 }),
  // A skein of 27.8 g that gives back 8 J/g at 1080 of about 1220 turns.
  'entries/slow-thread-2026/organza/torque.csv': () =>
    torqueLog({ turns: 1080, breakTurns: 1218, energy: 222, seed: 21 }),
  // Wound to 700 of about 900 turns, 31 g of rubber give back some 175 J; nearly half of it reaches the air.
  'entries/slow-thread-2026/shuttle/thrust.csv': () =>
    thrustLog({ run: 58, pull: 52, rate: 10, drift: 1.2, seed: 31 }),
  // A small propeller, held still, wastes more: a third of some 155 J.
  'entries/slow-thread-2026/warp-weighted/inner-thrust.csv': () =>
    thrustLog({ run: 18.6, pull: 23, rate: 20, drift: -0.8, seed: 32 }),
};
