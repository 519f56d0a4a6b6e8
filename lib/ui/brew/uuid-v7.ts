/**
 * A UUID whose first 48 bits are the time, so that identifiers made later sort later (RFC 9562, section 5.7). The rest
 * is random, so that two devices never make the same.
 *
 * @param at - Milliseconds since 1970.
 * @param random - Ten random bytes.
 */
export function uuidV7(at: number, random: Uint8Array): string {
  const time = at.toString(16).padStart(12, "0");
  const rest = [...random.slice(0, 10)].map((byte, i) => {
    if (i === 0) return (byte & 0x0f) | 0x70;
    return i === 2 ? (byte & 0x3f) | 0x80 : byte;
  });
  const hex = time + rest.map((byte) => byte.toString(16).padStart(2, "0")).join("");
  return [hex.slice(0, 8), hex.slice(8, 12), hex.slice(12, 16), hex.slice(16, 20), hex.slice(20)].join("-");
}
