import type { EquipmentField } from "@/lib/model/equipment-fields";

/** A field of an equipment profile on the form. */
export type ProfileField =
  | { readonly kind: "number" | "figure" | "optional"; readonly name: EquipmentField; readonly how: string }
  | {
      readonly kind: "choice";
      readonly name: ChoiceName;
      readonly label: string;
      readonly how: string;
      readonly options: Options;
    };

export type ChoiceName =
  "kettle.lid" | "mash.kind" | "mash.falseBottom" | "mash.heated" | "lauter.method" | "chiller.kind";
type Options = readonly { readonly value: string; readonly text: string }[];

export interface ProfileGroup {
  readonly id: string;
  readonly heading: string;
  readonly fields: readonly ProfileField[];
}

const YES_NO: Options = [
  { value: "yes", text: "Yes" },
  { value: "no", text: "No" },
];

const number = (name: EquipmentField, how: string): ProfileField => ({ kind: "number", name, how });
const figure = (name: EquipmentField, how: string): ProfileField => ({ kind: "figure", name, how });
const optional = (name: EquipmentField, how: string): ProfileField => ({ kind: "optional", name, how });
const choice = (name: ChoiceName, label: string, how: string, options: Options = YES_NO): ProfileField => ({
  kind: "choice",
  name,
  label,
  how,
  options,
});

/** The whole profile in the order of the brew day; each field says how it is measured. Common practice, no source. */
export const PROFILE_GROUPS: readonly ProfileGroup[] = [
  {
    id: "kettle",
    heading: "Kettle",
    fields: [
      number("kettle.capacity", "Fill it to the brim by the measured litre."),
      number("kettle.headspace", "What you keep free above a boil so that it does not foam over."),
      number("kettle.minimum", "The least water that covers the element, with a finger to spare."),
      number("kettle.openArea", "Inner diameter squared, times 0.785."),
      choice("kettle.lid", "Lid while it heats", "Whether it is covered until shortly before the boil."),
      number("kettle.heatCapacity", "Weight of the empty steel in kg, times 500."),
      number("kettle.ratedPower", "On the rating plate."),
      number("kettle.ratedVoltage", "On the rating plate."),
      number("kettle.supplyVoltage", "A plug-in meter, read while the kettle heats."),
      figure(
        "kettle.heatShare",
        "Heat 10 kg of water by 10 K: 116 Wh, over what an energy meter counted. An element in the liquid is near 100.",
      ),
      figure(
        "kettle.lossCoefficient",
        "Let a full hot kettle cool with its lid on: 1163 Wh for each tonne and kelvin, per hour, over kelvins above the air.",
      ),
      figure("kettle.boilOff", "Boil water for an hour, and weigh or measure cold before and after."),
      figure("kettle.trub", "What stays in the kettle after run-off, measured with a jug."),
      figure("kettle.transfer", "What comes out of chiller, pump and hoses when they are emptied."),
      figure("hopAbsorption", "Weigh drained kettle hops; each gram of dry pellets holds what they gained."),
    ],
  },
  {
    id: "mash",
    heading: "Mash",
    fields: [
      choice("mash.kind", "Mash vessel", "A basket or bag stands in the kettle; a tun is a vessel of its own.", [
        { value: "basket", text: "Basket" },
        { value: "bag", text: "Bag" },
        { value: "tun", text: "Tun" },
      ]),
      number("mash.capacity", "Fill it to the rim by the measured litre."),
      optional("mash.grainLimit", "What the maker states; empty where nothing but the volume limits it."),
      choice("mash.falseBottom", "False bottom", "Whether the wort drains through a raised sieve."),
      choice("mash.heated", "Heated", "Whether the mash itself can be heated between rests."),
      number("mash.heatCapacity", "Weight of what warms with the mash in kg, times 500 for steel."),
      number("mash.lossCoefficient", "As for the kettle, with the mash vessel full of hot water."),
      number("mash.thickest", "The least water with which you could still stir or pump."),
    ],
  },
  {
    id: "lauter",
    heading: "Lauter",
    fields: [
      choice("lauter.method", "Sparge", "How the grain is rinsed.", [
        { value: "none", text: "None, all the water in the mash" },
        { value: "batch", text: "In batches, stirred and drained" },
        { value: "continuous", text: "Continuous, under a layer of water" },
        { value: "pour-over", text: "Poured over the lifted grain" },
      ]),
      figure("lauter.absorption", "Mash water less run-off, over the dry grain."),
      figure("lauter.deadSpace", "Water that stays under the false bottom after draining."),
      figure("lauter.bypass", "Not measured by itself: logged brews find it."),
      figure("lauter.conversion", "Gravity of the first wort against what the maltster’s analysis allows."),
      optional("lauter.spargeHeater", "On its rating plate; empty where there is none."),
    ],
  },
  {
    id: "chiller",
    heading: "Chiller",
    fields: [
      choice("chiller.kind", "Chiller", "What cools the wort.", [
        { value: "immersion", text: "Coil in the kettle" },
        { value: "counterflow", text: "Counterflow or plates" },
        { value: "ice bath", text: "Ice bath" },
        { value: "none", text: "None, it stands overnight" },
      ]),
      figure("chiller.conductance", "From the minutes a logged brew took to chill."),
      number("chiller.coolantFlow", "A bucket and a watch."),
      number("chiller.coolant", "A thermometer in the running water, in the month you brew."),
    ],
  },
  {
    id: "fermenter",
    heading: "Fermenter",
    fields: [
      number("fermenter.capacity", "Fill it to the brim by the measured litre."),
      number("fermenter.headspace", "What you keep free for the foam."),
      figure("fermenter.left", "What stays with the yeast at packaging, measured with a jug."),
    ],
  },
  {
    id: "place",
    heading: "Place and habit",
    fields: [
      number("usualBatch", "What you usually put into the fermenter."),
      number("altitude", "A map; it sets where water boils."),
    ],
  },
];
