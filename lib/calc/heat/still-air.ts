/** Air over a kettle in a room, m/s: still, but for the draught its own warmth makes. Common practice, no source. */
export const STILL_AIR_SPEED = 0.1;
