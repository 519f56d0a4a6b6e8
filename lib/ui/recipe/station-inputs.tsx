"use client";

import type { ReactNode } from "react";
import type { Station } from "@/lib/calc/ledger";
import { FermenterInputs } from "./fermenter-inputs";
import { KettleInputs } from "./kettle-inputs";
import { MashInputs } from "./mash-inputs";
import { PackageInputs } from "./package-inputs";
import { StandInputs } from "./stand-inputs";
import type { StationInputsProps } from "./station-inputs-props";
import { WaterInputs } from "./water-inputs";

/** What goes in at each station; nothing is added while lautering. */
export function stationInputs(props: StationInputsProps): Readonly<Partial<Record<Station, ReactNode>>> {
  return {
    water: <WaterInputs {...props} />,
    mash: <MashInputs {...props} />,
    kettle: <KettleInputs {...props} />,
    stand: <StandInputs {...props} />,
    fermenter: <FermenterInputs {...props} />,
    package: <PackageInputs {...props} />,
  };
}
