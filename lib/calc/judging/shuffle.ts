import type { SeededRandom } from "./seeded-random";

/**
 * Puts things in an order of chance, every order alike (Fisher and Yates).
 *
 * @returns A new list.
 */
export function shuffle<T>(things: readonly T[], random: SeededRandom): readonly T[] {
  const left = [...things];
  const shuffled: T[] = [];
  while (left.length > 0) shuffled.push(...left.splice(Math.floor(random.uniform() * left.length), 1));
  return shuffled;
}
