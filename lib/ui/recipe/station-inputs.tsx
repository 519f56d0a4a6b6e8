import type { ReactNode } from "react";
import type { Station } from "@/lib/calc/ledger";
import { FermenterInputs } from "./fermenter-inputs";
import { KettleInputs } from "./kettle-inputs";
import { MashInputs } from "./mash-inputs";
import { PackageInputs } from "./package-inputs";
import { StandInputs } from "./stand-inputs";
import { WaterInputs } from "./water-inputs";

/** What goes in at each station; nothing is added while lautering. Each part listens for itself. */
export const STATION_INPUTS: Readonly<Partial<Record<Station, ReactNode>>> = {
  water: <WaterInputs />,
  mash: <MashInputs />,
  kettle: <KettleInputs />,
  stand: <StandInputs />,
  fermenter: <FermenterInputs />,
  package: <PackageInputs />,
};
