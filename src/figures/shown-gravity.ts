import { gravity } from '../flight/gravity.ts';
import { quantity } from './formula.ts';

/** Gravity as it stands in a line of numbers. */
export const shownGravity = quantity(String(gravity), 'm/s²');
