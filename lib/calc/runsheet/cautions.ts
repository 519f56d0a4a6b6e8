import type { CautionId } from "./step";

/** The usual caution for each danger, in the words that stand on the run sheet. Common practice, no source. */
export const CAUTIONS: Readonly<Record<CautionId, string>> = {
  mains:
    "Mains electricity beside water can kill: use residual-current protection and a circuit rated for the heater, and " +
    "keep plugs dry. The local code and a licensed electrician come first.",
  "hot liquor":
    "Hot liquor, wort and steam scald: wear closed shoes and gloves, secure every hose, and keep children and animals " +
    "away.",
  acid:
    "Acid burns skin and eyes: wear gloves and eye protection, pour it into plenty of water and never water into acid, " +
    "and follow the maker's label and the local code.",
  "hot basket":
    "The full basket is heavy and drips scalding wort: lift it with a hoist or with a second person, and let it drain " +
    "on a firm support.",
  "boil-over":
    "Foam rises fast as the boil begins: stay at the kettle with the lid off, and turn the heater down before the foam " +
    "reaches the rim.",
  cleaner:
    "Add cleaner to water, never water to cleaner. Wear gloves and eye protection, follow the maker's label, and never " +
    "mix cleaners.",
  glass: "Glass breaks when it is heated suddenly or carried full: let it warm slowly, and carry it in a crate.",
  pressure:
    "Fermentation makes gas: leave it a way out, and never exceed the pressure or carbonation that the maker of the " +
    "vessel states.",
  "closed room":
    "Carbon dioxide gathers low in closed rooms and is not smelled: air the room well before you enter and while you " +
    "work.",
};
