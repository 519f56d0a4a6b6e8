/**
 * Balling's equations (docs/sources.md#balling-1865), worked by hand: RE = 0.1808 OE + 0.8192 AE,
 * A = (OE − RE)/(2.0665 − 0.010665 OE), ABV = A × FG / 0.7907.
 */
export const BALLING = [
  { original: 12, apparent: 3, realExtract: 4.627, byWeight: 3.803, byVolume: 4.866 },
  { original: 14, apparent: 3.2, realExtract: 5.153, byWeight: 4.615, byVolume: 5.909 },
  { original: 16, apparent: 4, realExtract: 6.17, byWeight: 5.185, byVolume: 6.661 },
] as const;
