/** Loaded into the app by `npm run faults -- service`: at SIGUSR2 its clock goes by what stands in a file, in ms. */
import { readFileSync } from "node:fs";

const file = process.env.GYLEBOOK_CLOCK_FILE;
if (file !== undefined) {
  const RealDate = Date;
  let offset = 0;
  globalThis.Date = class extends RealDate {
    constructor(...given) {
      if (given.length === 0) super(RealDate.now() + offset);
      else super(...given);
    }
    // Own ones, because the framework copies what the constructor has itself.
    static parse = RealDate.parse;
    static UTC = RealDate.UTC;
    static now() {
      return RealDate.now() + offset;
    }
  };
  process.on("SIGUSR2", () => {
    offset = Number(readFileSync(file, "utf8"));
  });
}
