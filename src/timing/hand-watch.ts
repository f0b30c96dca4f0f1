/**
 * Standard uncertainty in s of one hand-held watch, start to stop, where a challenge states no other: 0.07 s for each press,
 * √2 for two. American Journal of Physics 87 (2019) 110.
 */
export const handWatch = 0.1;
