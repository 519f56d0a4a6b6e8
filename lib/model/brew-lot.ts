/** A lot that a row of a brew's recipe was taken from, as it was on the day. */
export interface BrewLot {
  readonly path: string;
  readonly lotId: string;
  readonly label: string;
  readonly unit: string;
  readonly needed: number;
  readonly taken: number;
  readonly isReturned: boolean;
}
