/** Nearly normal deviates from Park and Miller's generator, twelve of its numbers to one; the same for the same seed. */
export function seededNoise(seed: number): () => number {
  let state = seed;
  const uniform = (): number => (state = (state * 48271) % 2147483647) / 2147483647;
  return () => Array.from({ length: 12 }, uniform).reduce((sum, each) => sum + each, -6);
}
