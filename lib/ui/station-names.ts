import type { Station } from "@/lib/calc/ledger";

/** The stations as headings. */
export const STATION_NAMES: Readonly<Record<Station, string>> = {
  water: "Water",
  mash: "Mash",
  lauter: "Lauter",
  kettle: "Kettle",
  stand: "Stand and chill",
  fermenter: "Fermenter",
  package: "Package",
};
