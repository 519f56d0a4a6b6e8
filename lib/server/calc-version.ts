import "server-only";

/** Stored with what was computed; raised whenever lib/calc gives a different figure for the same input. */
export const CALC_VERSION = "1";
