import { rowLovibond } from "../ledger/grist-sums";
import { gristExtract } from "../mash";
import { kilograms } from "../units";
import type { Fermentable } from "../ledger";
import type { Intention } from "./intention";

/** A mashed row counts as one that colours when it is this many times darker than the palest mashed row. */
const COLOURING_RATIO = 4;

/** A grist without a pale malt, or with a colourless adjunct: anything below this times the ratio counts as pale, °L. */
const LEAST_PALE_LOVIBOND = 1;

/** How far the share of the colouring rows may be moved to hold the colour. */
const COLOURING_SPAN = { min: 0.25, max: 4 } as const;

const ONE_KG = kilograms(1);

/**
 * Tells which rows are there for their colour: those several times darker than the palest mashed row.
 *
 * @returns For each row, wherever it goes in, whether it colours.
 */
export function colouringRows(rows: readonly Pick<Fermentable, "station" | "colour">[]): boolean[] {
  const palest = rows.reduce(
    (least, row) => (row.station === "mash" ? Math.min(least, rowLovibond(row.colour)) : least),
    Infinity,
  );
  return rows.map((row) => rowLovibond(row.colour) > COLOURING_RATIO * Math.max(LEAST_PALE_LOVIBOND, palest));
}

/** Per kilogram of extract in the kettle: how much of each row is weighed out and what colour it brings. */
export class GristSplit {
  private readonly potential: readonly number[];
  private readonly lovibond: readonly number[];
  private readonly colours: readonly boolean[];
  private readonly pale: readonly boolean[];

  /**
   * Splits a grist.
   *
   * @param rows - Rows with the share of the extract that each should bring.
   * @param carrier - The one row that the colour is held by; null leaves it to all mashed rows that colour.
   */
  constructor(
    private readonly rows: Intention["fermentables"],
    carrier: number | null,
  ) {
    this.potential = rows.map((row) => gristExtract({ ...row, kg: ONE_KG }));
    this.lovibond = rows.map((row) => rowLovibond(row.colour));
    const dark = colouringRows(rows);
    this.pale = rows.map((row, i) => row.station === "mash" && dark[i] !== true && i !== carrier);
    this.colours = rows.map((row, i) =>
      carrier === null ? row.station === "mash" && dark[i] === true : i === carrier,
    );
  }

  /**
   * Finds the masses of all rows for an amount of extract in the kettle and a share of it that the mash gives up.
   *
   * The colouring rows are scaled so that the colour comes out as wanted, and the pale rows make up the extract.
   *
   * @returns Masses, kg, in the order of the rows.
   */
  masses(extractKg: number, mashYield: number, kgLovibond: number): number[] {
    const plain = this.rows.map((row, i) => this.massOf(row.share, i, extractKg, mashYield));
    const scale = this.colouringScale(plain, kgLovibond);
    if (scale === null) return plain;
    return plain.map((kg, i) => kg * this.factor(i, scale));
  }

  private massOf(share: number, i: number, extractKg: number, mashYield: number): number {
    const potential = this.potential[i] ?? 0;
    if (potential === 0) return 0;
    return (share * extractKg) / (potential * (this.rows[i]?.station === "mash" ? mashYield : 1));
  }

  /** Factor on the colouring rows; null where no row can carry the colour. */
  private colouringScale(plain: readonly number[], kgLovibond: number): number | null {
    const darkShare = this.shareOf((i) => this.colours[i] === true);
    const paleShare = this.shareOf((i) => this.isPale(i));
    if (darkShare === 0 || paleShare === 0) return null;
    let dark = 0;
    let pale = 0;
    let other = 0;
    plain.forEach((kg, i) => {
      const colour = kg * (this.lovibond[i] ?? 0);
      if (this.colours[i] === true) dark += colour;
      else if (this.isPale(i)) pale += colour;
      else other += colour;
    });
    // Colour with the dark rows at factor d: d·dark + (1 + (1 − d)·darkShare/paleShare)·pale + other.
    const perFactor = dark - (pale * darkShare) / paleShare;
    const rest = pale * (1 + darkShare / paleShare) + other;
    if (perFactor <= 0) return null;
    const most = Math.min(COLOURING_SPAN.max, 1 + (0.95 * paleShare) / darkShare);
    return Math.min(most, Math.max(COLOURING_SPAN.min, (kgLovibond - rest) / perFactor));
  }

  private factor(i: number, scale: number): number {
    if (this.colours[i] === true) return scale;
    if (!this.isPale(i)) return 1;
    const darkShare = this.shareOf((each) => this.colours[each] === true);
    const paleShare = this.shareOf((each) => this.isPale(each));
    return 1 + ((1 - scale) * darkShare) / paleShare;
  }

  private isPale(i: number): boolean {
    return this.pale[i] === true;
  }

  private shareOf(belongs: (i: number) => boolean): number {
    return this.rows.reduce((sum, row, i) => (belongs(i) ? sum + row.share : sum), 0);
  }
}
