/**
 * Plain JSON of a believable recipe and kettle, as a form would send it: invented, and used only as input. Tests change
 * single fields of it.
 */
const figure = (value: number, sd: number) => ({ value, sd, from: "stated", count: 0 });

export const sampleEquipment = () => ({
  name: "Test kettle",
  kettle: {
    capacity: 40,
    headspace: 4,
    minimum: 8,
    openArea: 0.1,
    lid: true,
    heatCapacity: 5000,
    ratedPower: 3000,
    ratedVoltage: 230,
    supplyVoltage: 230,
    heatShare: figure(0.95, 0.02),
    lossCoefficient: figure(5, 2),
    boilOff: figure(3, 0.4),
    trub: figure(1.5, 0.3),
    transfer: figure(0.5, 0.2),
  },
  mash: {
    kind: "basket",
    capacity: 32,
    grainLimit: 9,
    falseBottom: true,
    heated: true,
    heatCapacity: 1500,
    lossCoefficient: 4,
    thickest: 2.2,
  },
  lauter: {
    method: "pour-over",
    absorption: figure(0.85, 0.1),
    deadSpace: figure(0.5, 0.3),
    bypass: figure(0.2, 0.1),
    conversion: figure(0.95, 0.02),
    spargeHeater: 1500,
  },
  hopAbsorption: figure(6, 2),
  chiller: { kind: "immersion", conductance: figure(250, 60), coolantFlow: 8, coolant: 12 },
  fermenter: { capacity: 30, headspace: 4, left: figure(1, 0.3) },
  usualBatch: 21,
  altitude: 120,
});

export const sampleAmbient = () => ({ air: 18, humidity: 0.5, tapWater: 12, grain: 18 });

export const sampleRecipe = () => ({
  intoFermenter: 21,
  topUp: 0,
  thickness: 3.5,
  mash: [
    { celsius: 66, minutes: 60 },
    { celsius: 76, minutes: 10 },
  ],
  mashes: 1,
  boil: 60,
  stand: { celsius: 80, minutes: 20 },
  fermentables: [
    {
      name: "Pale malt",
      kind: "malt",
      kg: 4.5,
      extract: 0.81,
      moisture: 0.04,
      colour: 6,
      station: "mash",
      fermentability: null,
      acidity: { distilledWaterPh: 5.7, buffering: 38, lacticFraction: 0 },
    },
    {
      name: "Crystal malt",
      kind: "malt",
      kg: 0.3,
      extract: 0.76,
      moisture: 0.05,
      colour: 120,
      station: "mash",
      fermentability: null,
      acidity: null,
    },
  ],
  hops: [
    { name: "Bitter hop", grams: 25, alpha: 0.1, use: "boil", minutes: 60 },
    { name: "Aroma hop", grams: 40, alpha: 0.06, use: "stand", minutes: 20 },
  ],
  water: {
    source: { calcium: 40, magnesium: 6, sodium: 12, sulfate: 30, chloride: 18, bicarbonate: 90 },
    salts: { gypsum: 4 },
    acid: { solution: { acid: "lactic", massFraction: 0.8, density: 1.19 }, ml: 4 },
  },
  yeast: { name: "Ale yeast", attenuationLow: 0.73, attenuationHigh: 0.8, pitch: 0.75, celsius: 19 },
  packaging: { container: "bottle", carbonation: 2.4, priming: "sucrose", warmest: 20, rated: 3.5 },
});

export const sampleContent = () => ({
  recipe: sampleRecipe(),
  entered: { "fermentables.0.kg": "4.5 kg" },
  style: null,
  notes: "",
  writtenOn: { name: "Test kettle", equipment: sampleEquipment(), ambient: sampleAmbient() },
});
