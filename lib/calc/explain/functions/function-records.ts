import { ADAPT_FUNCTIONS } from "./adapt-functions";
import { ALCOHOL_FUNCTIONS } from "./alcohol-functions";
import { BITTERNESS_CURVE_FUNCTIONS } from "./bitterness-curve-functions";
import { BITTERNESS_FUNCTIONS } from "./bitterness-functions";
import { CARBONATION_FUNCTIONS } from "./carbonation-functions";
import { CARBONATION_PRIMING_FUNCTIONS } from "./carbonation-priming-functions";
import { COLOUR_FUNCTIONS } from "./colour-functions";
import { COMPARE_BREWS_FUNCTIONS } from "./compare-brews-functions";
import { COMPARE_FUNCTIONS } from "./compare-functions";
import { EXPLAIN_FUNCTIONS } from "./explain-functions";
import { FERMENTATION_COURSE_FUNCTIONS } from "./fermentation-course-functions";
import { FERMENTATION_FUNCTIONS } from "./fermentation-functions";
import { GRAVITY_FUNCTIONS } from "./gravity-functions";
import { GRAVITY_INSTRUMENT_FUNCTIONS } from "./gravity-instrument-functions";
import { HEAT_KETTLE_FUNCTIONS } from "./heat-kettle-functions";
import { HEAT_MASH_FUNCTIONS } from "./heat-mash-functions";
import { HEAT_WATER_FUNCTIONS } from "./heat-water-functions";
import { JUDGING_FUNCTIONS } from "./judging-functions";
import { JUDGING_PREPARATION_FUNCTIONS } from "./judging-preparation-functions";
import { JUDGING_TEST_FUNCTIONS } from "./judging-test-functions";
import { KETTLE_FUNCTIONS } from "./kettle-functions";
import { KETTLE_READING_FUNCTIONS } from "./kettle-reading-functions";
import { LAUTER_FUNCTIONS } from "./lauter-functions";
import { LEARN_BREW_FUNCTIONS } from "./learn-brew-functions";
import { LEARN_FUNCTIONS } from "./learn-functions";
import { LEDGER_FUNCTIONS } from "./ledger-functions";
import { MASH_FUNCTIONS } from "./mash-functions";
import { NUMERICS_FUNCTIONS } from "./numerics-functions";
import { ORDER_FUNCTIONS } from "./order-functions";
import { RUNSHEET_FUNCTIONS } from "./runsheet-functions";
import { STATISTICS_FUNCTIONS } from "./statistics-functions";
import { STATISTICS_TAIL_FUNCTIONS } from "./statistics-tail-functions";
import { UNITS_FUNCTIONS } from "./units-functions";
import { UNITS_QUANTITY_FUNCTIONS } from "./units-quantity-functions";
import { WATER_ACID_FUNCTIONS } from "./water-acid-functions";
import { WATER_FUNCTIONS } from "./water-functions";
import { WATER_MIXING_FUNCTIONS } from "./water-mixing-functions";
import { WATER_PH_FUNCTIONS } from "./water-ph-functions";
import type { FunctionRecord } from "./function-record";

/** How the public functions of all subjects are explained, but for the one that reads these records. */
export const SUBJECT_FUNCTIONS: readonly FunctionRecord[] = [
  ...ADAPT_FUNCTIONS,
  ...ALCOHOL_FUNCTIONS,
  ...BITTERNESS_CURVE_FUNCTIONS,
  ...BITTERNESS_FUNCTIONS,
  ...CARBONATION_FUNCTIONS,
  ...CARBONATION_PRIMING_FUNCTIONS,
  ...COLOUR_FUNCTIONS,
  ...COMPARE_FUNCTIONS,
  ...COMPARE_BREWS_FUNCTIONS,
  ...EXPLAIN_FUNCTIONS,
  ...FERMENTATION_COURSE_FUNCTIONS,
  ...FERMENTATION_FUNCTIONS,
  ...GRAVITY_FUNCTIONS,
  ...GRAVITY_INSTRUMENT_FUNCTIONS,
  ...HEAT_KETTLE_FUNCTIONS,
  ...HEAT_MASH_FUNCTIONS,
  ...HEAT_WATER_FUNCTIONS,
  ...JUDGING_FUNCTIONS,
  ...JUDGING_PREPARATION_FUNCTIONS,
  ...JUDGING_TEST_FUNCTIONS,
  ...KETTLE_FUNCTIONS,
  ...KETTLE_READING_FUNCTIONS,
  ...LAUTER_FUNCTIONS,
  ...LEARN_BREW_FUNCTIONS,
  ...LEARN_FUNCTIONS,
  ...LEDGER_FUNCTIONS,
  ...MASH_FUNCTIONS,
  ...NUMERICS_FUNCTIONS,
  ...ORDER_FUNCTIONS,
  ...RUNSHEET_FUNCTIONS,
  ...STATISTICS_FUNCTIONS,
  ...STATISTICS_TAIL_FUNCTIONS,
  ...UNITS_FUNCTIONS,
  ...UNITS_QUANTITY_FUNCTIONS,
  ...WATER_ACID_FUNCTIONS,
  ...WATER_FUNCTIONS,
  ...WATER_MIXING_FUNCTIONS,
  ...WATER_PH_FUNCTIONS,
];
