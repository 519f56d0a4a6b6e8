import type { FilledContainer, Packaged } from "../log/log-event";

/** A kind of bottle or keg. The sizes are the usual ones of the trade, of no maker. */
export interface ContainerKind {
  readonly name: string;
  readonly litres: number;
}

/**
 * Generic sizes to choose from. No pressure is stated with them: what counts is the figure of the maker of the containers
 * at hand, which is typed by who has read it there.
 */
export const CONTAINER_KINDS: readonly ContainerKind[] = [
  { name: "330 mL bottle", litres: 0.33 },
  { name: "500 mL bottle", litres: 0.5 },
  { name: "750 mL bottle", litres: 0.75 },
  { name: "1 L plastic bottle", litres: 1 },
  { name: "5 L keg", litres: 5 },
  { name: "10 L keg", litres: 10 },
  { name: "19 L keg", litres: 19 },
  { name: "30 L keg", litres: 30 },
];

/** "38 × 500 mL bottle, 1 × 5 L keg". */
export function containerWords({ containers }: Pick<Packaged, "containers">): string {
  return containers.map(({ name, count }: FilledContainer) => `${String(count)} × ${name}`).join(", ");
}
