/** Standard acceleration of free fall in m/s², exact by convention (3rd General Conference on Weights and Measures, 1901). */
export const gravity = 9.80665;
