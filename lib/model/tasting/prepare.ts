import { z } from "zod";
import { SERVING_RANGE } from "@/lib/calc/judging";
import { ebc, ibu, percent, specificGravity, type QuantityMaker } from "@/lib/calc/units";
import { counted, measured } from "../measured";
import { plainDay } from "../plain-day";
import { STYLES } from "../styles";
import { oneOf, optionalText, recordId, written } from "../written";
import { FLIGHT_KINDS } from "./tasting";

export const BLIND_CODES = { min: 100, max: 999 } as const;
export const MOST_FLIGHTS = 99;

const blindCode = counted("Blind code", BLIND_CODES);
const flightNo = counted("Flight", { min: 1, max: MOST_FLIGHTS });

const head = {
  title: written("Title", 160),
  heldOn: plainDay("Day").nullable(),
  note: optionalText("Note", 2000),
};

/** A tasting to be prepared by somebody, who then knows everything and judges nothing. */
export const newTasting = z.strictObject({ ...head, stewardId: recordId, sharedBrewId: recordId.nullable() });
export type NewTasting = z.output<typeof newTasting>;

/** A draft as somebody saw it: whoever changes it on an older one is told. */
export const draftSeen = z.strictObject({
  id: recordId,
  lockVersion: counted("Version", { min: 1, max: 1_000_000_000 }),
});
export type DraftSeen = z.output<typeof draftSeen>;

export const tastingChange = draftSeen.extend(head);
export type TastingChange = z.output<typeof tastingChange>;

export const newFlight = draftSeen.extend({
  title: written("Title", 160),
  kind: oneOf("Kind", FLIGHT_KINDS),
  palateLimit: counted("Most entries for one palate", SERVING_RANGE.palateLimit).nullable(),
});
export type NewFlight = z.output<typeof newFlight>;

export const flightChange = newFlight.omit({ kind: true }).extend({ flightNo });
export type FlightChange = z.output<typeof flightChange>;

export const flightChosen = draftSeen.extend({ flightNo });
export type FlightChosen = z.output<typeof flightChosen>;

/** Who judges a flight and who pours it; nobody does both. */
export const flightPanel = flightChosen.extend({
  judges: z.array(recordId).max(SERVING_RANGE.judges.max),
  pourers: z.array(recordId).max(20),
});
export type FlightPanel = z.output<typeof flightPanel>;

export const MOST_ENTRIES = SERVING_RANGE.entries.max;

export const brewsEntered = flightChosen.extend({
  brewIds: z.array(recordId).min(1, "Brews: choose at least one").max(MOST_ENTRIES),
});
export type BrewsEntered = z.output<typeof brewsEntered>;

export const entryChosen = draftSeen.extend({ entryNo: blindCode });
export type EntryChosen = z.output<typeof entryChosen>;

const styleCode = z
  .string({ error: "Style is not chosen" })
  .refine((code) => STYLES.some((style) => style.code === code), { message: "Style is not one of the list" })
  .nullable();

/** The style that an entry is judged as, and the flight that it is tasted in. */
export const entryPlaced = entryChosen.extend({ flightNo, styleCode });
export type EntryPlaced = z.output<typeof entryPlaced>;

/** A number of a beer from elsewhere, where its brewer knows it. */
function known<U extends string>(label: string, make: QuantityMaker<U>, bounds: { min: number; max: number }) {
  return measured(label, make, bounds).nullable();
}

export const beerFigures = z.strictObject({
  originalGravity: known("Original gravity", specificGravity, { min: 1, max: 1.2 }),
  finalGravity: known("Final gravity", specificGravity, { min: 0.98, max: 1.1 }),
  alcohol: known("Alcohol by volume", percent, { min: 0, max: 25 }),
  bitterness: known("Bitterness", ibu, { min: 0, max: 200 }),
  colour: known("Colour", ebc, { min: 0, max: 400 }),
});
export type BeerFigures = z.output<typeof beerFigures>;

/** A beer from elsewhere: nothing is known of it but what its brewer says. */
export const beerEntered = flightChosen.extend({
  beerName: written("Beer", 160),
  brewerName: optionalText("Brewer", 120),
  figures: beerFigures,
});
export type BeerEntered = z.output<typeof beerEntered>;
