/** What the control of a row is called: this and the path of the row, "lot hops.2". */
export const LOT_FIELD = "lot ";
