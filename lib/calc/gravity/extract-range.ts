/**
 * Extracts that have a gravity. Below zero it is apparent extract: beer that alcohol makes lighter than water. −9 °P is lighter
 * than sugar wort of 35 °P could ever become.
 */
export const EXTRACT_RANGE = { unit: "°P", min: -9, max: 35 } as const;
