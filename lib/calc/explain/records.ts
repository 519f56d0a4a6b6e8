import type { QuantityId } from "../ledger";
import { DAY_RECORDS } from "./day-records";
import type { ExplanationRecord } from "./explanation-record";
import { FERMENTER_RECORDS } from "./fermenter-records";
import { KETTLE_RECORDS } from "./kettle-records";
import { LAUTER_RECORDS } from "./lauter-records";
import { MASH_RECORDS } from "./mash-records";
import { PACKAGE_RECORDS } from "./package-records";
import { STAND_RECORDS } from "./stand-records";
import { WATER_RECORDS } from "./water-records";

/** How every number of the ledger is explained. */
export const RECORDS: Readonly<Record<QuantityId, ExplanationRecord>> = {
  ...WATER_RECORDS,
  ...MASH_RECORDS,
  ...LAUTER_RECORDS,
  ...KETTLE_RECORDS,
  ...STAND_RECORDS,
  ...FERMENTER_RECORDS,
  ...PACKAGE_RECORDS,
  ...DAY_RECORDS,
};
