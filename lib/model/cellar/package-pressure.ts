import { bottlePressure, closedPressure } from "@/lib/calc/carbonation";
import { bar, celsius, volumesCo2, type VolumesCo2 } from "@/lib/calc/units";
import type { FilledContainer, Packaged } from "../log/log-event";

/** A kind of container that is not made for the beer in it. */
export interface OverRated {
  readonly name: string;
  readonly gaugeBar: number;
  /** What was held against it: a pressure that is stated on the container, or the carbonation of the recipe's. */
  readonly ratedBar: number | null;
  readonly rated: number | null;
}

type Filled = Pick<Packaged, "containers" | "volumesCo2" | "storageC">;

/** Gauge pressure in the full containers at the warmest place where they will stand, bar. */
export function pressureOf({ volumesCo2: volumes, storageC }: Omit<Filled, "containers">): number {
  return closedPressure({ volumes: volumesCo2(volumes), celsius: celsius(storageC) });
}

/**
 * The containers that are not made for it.
 *
 * @param rated - Highest carbonation that the recipe states for its containers: what counts where no pressure is stated.
 */
export function overRated({ containers, volumesCo2: volumes, storageC }: Filled, rated: VolumesCo2): OverRated[] {
  const beer = { volumes: volumesCo2(volumes), celsius: celsius(storageC) };
  return containers.flatMap(({ name, ratedBar }: FilledContainer): OverRated[] => {
    const pressure = bottlePressure(ratedBar === null ? { ...beer, rated } : { ...beer, ratedBar: bar(ratedBar) });
    return pressure.ok ? [] : [{ name, ...pressure }];
  });
}

/** Whether a name that was typed is one of these, however it is spelt. */
export function isSignedWith(typed: string, names: readonly string[]): boolean {
  const plain = (name: string): string => name.trim().replaceAll(/\s+/g, " ").toLocaleLowerCase("en-GB");
  return names.some((name) => plain(name) === plain(typed));
}
