/** Half-width of the central 80 % of a normal distribution, in standard deviations: every 80 % interval is made with it. */
export const Z80 = 1.2815515655446004;
