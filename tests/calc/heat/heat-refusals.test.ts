import { describe, expect, it } from "vitest";
import { boilOffRate, chill, heatUp, infusionVolume, restTemperature, strikeTemperature } from "@/lib/calc/heat";

type Call = (a: never) => unknown;
type Row = readonly [change: object, message: string];

function refusals(call: Call, plain: object, rows: readonly Row[]): void {
  it.each(rows)(`${call.name} refuses %j`, (change, message) => {
    expect(() => call({ ...plain, ...change } as never)).toThrow(message);
  });
}

describe("what no kettle can be", () => {
  refusals(
    heatUp,
    {
      massKg: 20,
      plato: 10,
      vesselHeatCapacity: 4000,
      powerW: 2000,
      lossCoefficient: 8,
      openAreaM2: 0.1,
      fromC: 60,
      toC: 90,
      ambientC: 20,
      relativeHumidity: 0.5,
    },
    [
      [{ massKg: NaN }, "mass NaN kg is outside 0 to 100000 kg"],
      [{ vesselHeatCapacity: -1 }, "vessel heat capacity -1 J/K is outside 0 to 1000000000 J/K"],
      [{ powerW: -1 }, "power -1 W is outside 0 to 10000000 W"],
      [{ lossCoefficient: -0.1 }, "heat loss -0.1 W/K is outside 0 to 1000000 W/K"],
      [{ openAreaM2: 101 }, "open area 101 m² is outside 0 to 100 m²"],
      [{ fromC: -0.1 }, "start temperature -0.1 °C is outside 0 to 102 °C"],
      [{ toC: NaN }, "target temperature NaN °C is outside 0 to 102 °C"],
      [{ ambientC: -31 }, "air temperature -31 °C is outside -30 to 60 °C"],
    ],
  );

  refusals(
    chill,
    {
      kind: "immersion",
      massKg: 20,
      plato: 10,
      vesselHeatCapacity: 4000,
      conductance: 400,
      coolantFlow: 6,
      coolantC: 12,
      lossCoefficient: 8,
      ambientC: 20,
      fromC: 99,
      toC: 20,
    },
    [
      [{ massKg: -1 }, "mass -1 kg is outside 0 to 100000 kg"],
      [{ plato: 36 }, "extract 36 °P is outside 0 to 35 °P"],
      [{ vesselHeatCapacity: NaN }, "vessel heat capacity NaN J/K is outside 0 to 1000000000 J/K"],
      [{ conductance: -1 }, "conductance -1 W/K is outside 0 to 1000000 W/K"],
      [{ coolantFlow: -1 }, "coolant flow -1 L/min is outside 0 to 10000 L/min"],
      [{ coolantC: -0.1 }, "coolant temperature -0.1 °C is outside 0 to 60 °C"],
      [{ lossCoefficient: NaN }, "heat loss NaN W/K is outside 0 to 1000000 W/K"],
      [{ ambientC: 61 }, "air temperature 61 °C is outside -30 to 60 °C"],
      [{ toC: -1 }, "target temperature -1 °C is outside 0 to 102 °C"],
    ],
  );

  refusals(strikeTemperature, { mashC: 67, grainC: 20, grainKg: 4, waterKg: 12, vesselHeatCapacity: 0, vesselC: 20 }, [
    [{ mashC: 103 }, "mash temperature 103 °C is outside -20 to 102 °C"],
    [{ grainC: -21 }, "grain temperature -21 °C is outside -20 to 102 °C"],
    [{ vesselC: NaN }, "vessel temperature NaN °C is outside -20 to 102 °C"],
    [{ grainKg: -1 }, "grain -1 kg is outside 0 to 100000 kg"],
    [{ grainHeatCapacity: 99 }, "grain specific heat 99 J/(kg·K) is outside 100 to 5000 J/(kg·K)"],
    [{ vesselHeatCapacity: -1 }, "vessel heat capacity -1 J/K is outside 0 to 1000000000 J/K"],
    [{ grainKg: 1000, waterKg: 1 }, "strike temperature"],
  ]);

  refusals(infusionVolume, { fromC: 52, toC: 65, infusionC: 98, grainKg: 5, waterKg: 12, vesselHeatCapacity: 0 }, [
    [{ fromC: -21 }, "mash temperature -21 °C is outside -20 to 102 °C"],
    [{ infusionC: 103 }, "infusion temperature 103 °C is outside -20 to 102 °C"],
    [{ grainKg: NaN }, "grain NaN kg is outside 0 to 100000 kg"],
    [{ waterKg: -1 }, "mash water -1 kg is outside 0 to 100000 kg"],
    [{ grainHeatCapacity: 5001 }, "grain specific heat 5001 J/(kg·K) is outside 100 to 5000 J/(kg·K)"],
    [{ vesselHeatCapacity: -1 }, "vessel heat capacity -1 J/K is outside 0 to 1000000000 J/K"],
    [{ infusionC: 20, toC: 20.05 }, "target temperature 20.05 °C is outside 20.1 to 52 °C"],
  ]);

  refusals(restTemperature, { fromC: 67, ambientC: 20, heatCapacity: 36000, lossCoefficient: 1, minutes: 60 }, [
    [{ fromC: 131 }, "start temperature 131 °C is outside -30 to 130 °C"],
    [{ ambientC: NaN }, "air temperature NaN °C is outside -30 to 130 °C"],
    [{ lossCoefficient: -1 }, "heat loss -1 W/K is outside 0 to 1000000 W/K"],
    [{ minutes: -1 }, "time -1 min is outside 0 to 1000000 min"],
  ]);

  refusals(boilOffRate, { powerW: 2000, lossCoefficient: 8, boilingC: 100, ambientC: 20 }, [
    [{ powerW: NaN }, "power NaN W is outside 0 to 10000000 W"],
    [{ lossCoefficient: -1 }, "heat loss -1 W/K is outside 0 to 1000000 W/K"],
    [{ ambientC: -31 }, "air temperature -31 °C is outside -30 to 60 °C"],
  ]);
});
