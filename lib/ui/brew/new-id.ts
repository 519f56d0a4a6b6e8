import { uuidV7 } from "./uuid-v7";

const RANDOM_BYTES = 10;

/**
 * An identifier made on this device, now. randomUUID is missing where the page came over plain http from another
 * machine, as in a garage it may.
 */
export function newId(at: number = Date.now()): string {
  return uuidV7(at, crypto.getRandomValues(new Uint8Array(RANDOM_BYTES)));
}
