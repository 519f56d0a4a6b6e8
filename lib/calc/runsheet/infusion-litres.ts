import { infusionVolume } from "../heat";
import { waterDensity } from "../gravity";
import { celsius, joulesPerKelvin, kilograms } from "../units";
import type { PlannedPhase, RunSheetInput } from "./step-drafts";

const WATER_20 = waterDensity(celsius(20));

/**
 * Finds the boiling water that takes the mash to a rest in a tun that cannot be heated.
 *
 * It is worked forward from the strike water; the ledger worked backward from all the mash water, and both agree.
 *
 * @returns Water, L at 20 °C; 0 for the first rest, a cooler one, or a heated mash.
 * @source Heat balance of mixing (docs/sources.md#energy-balance)
 */
export function infusionLitres(a: RunSheetInput, phase: PlannedPhase): number {
  const { recipe, equipment, ledger } = a;
  const boilC = ledger.quantities["kettle.boilingPoint"];
  if (equipment.mash.heated || phase.rest === 0 || boilC === null) return 0;
  const strike = ledger.phases.find(({ name }) => name === "heat strike water");
  const grainKg = kilograms((ledger.quantities["mash.grist"] ?? 0) / recipe.mashes);
  const vesselHeatCapacity = equipment.mash.kind === "tun" ? equipment.mash.heatCapacity : joulesPerKelvin(0);
  let waterKg = (strike?.litres ?? 0) * WATER_20;
  let infusionKg = 0;
  for (let i = 1; i <= phase.rest; i++) {
    const fromC = recipe.mash[i - 1]?.celsius ?? celsius(phase.fromC);
    const toC = recipe.mash[i]?.celsius ?? fromC;
    const heat = { fromC, toC, infusionC: celsius(boilC), grainKg, waterKg: kilograms(waterKg), vesselHeatCapacity };
    infusionKg = toC > fromC ? infusionVolume(heat) : 0;
    waterKg += infusionKg;
  }
  return infusionKg / WATER_20;
}
