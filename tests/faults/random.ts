/** Numbers from 0 to 1 that are the same for the same seed: Marsaglia's xorshift, 32 bits (J. Stat. Softw. 8(14), 2003). */
export function seededRandom(seed: number): () => number {
  let state = (seed * 2_654_435_761) >>> 0 || 1;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    state >>>= 0;
    return state / 4_294_967_296;
  };
}
