/**
 * Balling's equations (docs/sources.md#balling-1865), worked by hand: RE = 0.1808 OE + 0.8192 AE,
 * A = (OE − RE)/(2.0665 − 0.010665 OE), ABV = A × FG / 0.7907.
 */
export const BALLING = [
  { original: 12, apparent: 3, realExtract: 4.627, byWeight: 3.803, byVolume: 4.866 },
  { original: 14, apparent: 3.2, realExtract: 5.153, byWeight: 4.615, byVolume: 5.909 },
  { original: 16, apparent: 4, realExtract: 6.17, byWeight: 5.185, byVolume: 6.661 },
] as const;

/** OIML R 22 (docs/sources.md#oiml-r22), table of densities at 20 °C by alcohol by volume. */
export const ETHANOL_DENSITY = [
  { volumePercent: 10, kgPerM3: 984.71 },
  { volumePercent: 30, kgPerM3: 962.21 },
  { volumePercent: 50, kgPerM3: 930.14 },
  { volumePercent: 70, kgPerM3: 885.56 },
  { volumePercent: 90, kgPerM3: 829.18 },
] as const;

/** The same at 20 °C, mass share p to volume share p ρ(p)/789.24, worked from the general formula. */
export const ETHANOL_BY_VOLUME = [
  { massPercent: 4, volumePercent: 5.023 },
  { massPercent: 5, volumePercent: 6.268 },
  { massPercent: 6, volumePercent: 7.509 },
  { massPercent: 8, volumePercent: 9.982 },
  { massPercent: 3.181, volumePercent: 4 },
  { massPercent: 9.641, volumePercent: 12 },
] as const;
