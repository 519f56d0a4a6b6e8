import type { Ambient } from "../ledger";
import {
  celsius,
  fraction,
  kilogramsPerHour,
  litres,
  litresPerKilogram,
  litresPerMinute,
  metres,
  volts,
  watts,
  wattsPerKelvin,
} from "../units";
import { moved, ofPart, possible, type Nudge } from "./nudge";

/** Water this cold is still water. */
const COLDEST_WATER_C = 1;

/** Changes of the equipment and of the day. */
export const EQUIPMENT_NUDGES = {
  "supply voltage 5 % lower": ofPart("kettle", ({ supplyVoltage }) => ({ supplyVoltage: volts(supplyVoltage * 0.95) })),
  "a heater one fifth stronger": ofPart("kettle", ({ ratedPower }) => {
    const stronger = possible(watts, ratedPower * 1.2);
    return stronger === null ? null : { ratedPower: stronger };
  }),
  "half the heat loss of the kettle": ofPart("kettle", (kettle) => {
    const lossCoefficient = moved(kettle.lossCoefficient, wattsPerKelvin, kettle.lossCoefficient.value / 2);
    return lossCoefficient === null ? null : { lossCoefficient };
  }),
  "with a lid while heating": ofPart("kettle", () => ({ lid: true })),
  "without a lid while heating": ofPart("kettle", () => ({ lid: false })),
  "boil-off 0.5 kg/h higher": ofPart("kettle", (kettle) => {
    const boilOff = moved(kettle.boilOff, kilogramsPerHour, kettle.boilOff.value + 0.5);
    return boilOff === null ? null : { boilOff };
  }),
  "half the trub": ofPart("kettle", (kettle) => {
    const trub = moved(kettle.trub, litres, kettle.trub.value / 2);
    return trub === null ? null : { trub };
  }),
  "nothing left in chiller and hoses": ofPart("kettle", (kettle) => {
    const transfer = moved(kettle.transfer, litres, 0);
    return transfer === null ? null : { transfer };
  }),
  "grain that keeps 10 % more wort": ofPart("lauter", (lauter) => {
    const absorption = moved(lauter.absorption, litresPerKilogram, lauter.absorption.value * 1.1);
    return absorption === null ? null : { absorption };
  }),
  "0.5 L more dead space under the grain": ofPart("lauter", (lauter) => {
    const deadSpace = moved(lauter.deadSpace, litres, lauter.deadSpace.value + 0.5);
    return deadSpace === null ? null : { deadSpace };
  }),
  "no sparge water past the grain": ofPart("lauter", (lauter) => {
    const bypass = moved(lauter.bypass, fraction, 0);
    return bypass === null ? null : { bypass };
  }),
  "conversion 3 percentage points lower": ofPart("lauter", (lauter) => {
    const conversion = moved(lauter.conversion, fraction, lauter.conversion.value - 0.03);
    return conversion === null ? null : { conversion };
  }),
  "without sparging": ofPart<"lauter">("lauter", () => ({ method: "none" })),
  "hops that keep 1 L/kg more wort": (brew) => {
    const { hopAbsorption } = brew.equipment;
    const more = moved(hopAbsorption, litresPerKilogram, hopAbsorption.value + 1);
    return more === null ? null : { ...brew, equipment: { ...brew.equipment, hopAbsorption: more } };
  },
  "a chiller half as strong": ofPart("chiller", (chiller) => {
    const conductance = moved(chiller.conductance, wattsPerKelvin, chiller.conductance.value / 2);
    return conductance === null ? null : { conductance };
  }),
  "half the flow of cooling water": ofPart("chiller", ({ coolantFlow }) => ({
    coolantFlow: litresPerMinute(coolantFlow / 2),
  })),
  "cooling water 5 °C warmer": ofPart("chiller", ({ coolant }) => {
    const warmer = possible(celsius, coolant + 5);
    return warmer === null ? null : { coolant: warmer };
  }),
  "twice as much left with the yeast": ofPart("fermenter", (fermenter) => {
    const left = moved(fermenter.left, litres, fermenter.left.value * 2);
    return left === null ? null : { left };
  }),
  "at 1600 m above the sea": (brew) => ({ ...brew, equipment: { ...brew.equipment, altitude: metres(1600) } }),
  "at sea level": (brew) => ({ ...brew, equipment: { ...brew.equipment, altitude: metres(0) } }),
  "tap water 5 °C colder": ofDay(({ tapWater }) =>
    tapWater - 5 < COLDEST_WATER_C ? null : { tapWater: celsius(tapWater - 5) },
  ),
  "air 10 °C colder": ofDay(({ air }) => {
    const colder = possible(celsius, air - 10);
    return colder === null ? null : { air: colder };
  }),
  "grain 10 °C colder": ofDay(({ grain }) => {
    const colder = possible(celsius, grain - 10);
    return colder === null ? null : { grain: colder };
  }),
} as const satisfies Readonly<Record<string, Nudge>>;

function ofDay(change: (ambient: Ambient) => Partial<Ambient> | null): Nudge {
  return (brew) => {
    const part = change(brew.ambient);
    return part === null ? null : { ...brew, ambient: { ...brew.ambient, ...part } };
  };
}
