/**
 * pK1 of carbonic acid by temperature, °C, as printed: Harned and Davis 1943, J. Am. Chem. Soc. 65:2030
 * (docs/sources.md#harned-davis-1943).
 */
export const PK1_HARNED_DAVIS = [
  { celsius: 0, pk: 6.579 },
  { celsius: 5, pk: 6.517 },
  { celsius: 10, pk: 6.464 },
  { celsius: 15, pk: 6.419 },
  { celsius: 20, pk: 6.381 },
  { celsius: 25, pk: 6.352 },
  { celsius: 30, pk: 6.327 },
  { celsius: 35, pk: 6.309 },
  { celsius: 40, pk: 6.298 },
  { celsius: 45, pk: 6.29 },
  { celsius: 50, pk: 6.285 },
] as const;

/**
 * pK2 of carbonic acid by temperature, °C, as printed: Harned and Scholes 1941, J. Am. Chem. Soc. 63:1706
 * (docs/sources.md#harned-scholes-1941).
 */
export const PK2_HARNED_SCHOLES = [
  { celsius: 0, pk: 10.625 },
  { celsius: 5, pk: 10.557 },
  { celsius: 10, pk: 10.49 },
  { celsius: 15, pk: 10.43 },
  { celsius: 20, pk: 10.377 },
  { celsius: 25, pk: 10.329 },
  { celsius: 30, pk: 10.29 },
  { celsius: 35, pk: 10.25 },
  { celsius: 40, pk: 10.22 },
  { celsius: 50, pk: 10.172 },
] as const;
