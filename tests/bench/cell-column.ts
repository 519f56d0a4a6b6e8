type Cell = string | number;

/** A column of labelled cells; a formula names other cells as [label]. */
export class Column {
  private readonly rows: Cell[] = [];
  private readonly at = new Map<string, number>();

  add(label: string, content: Cell): void {
    this.at.set(label, this.rows.length);
    this.rows.push(typeof content === "number" ? content : `=${this.resolve(content)}`);
  }

  private resolve(formula: string): string {
    return formula.replace(/\[([^\]]+)\]/g, (_, label: string) => `A${String(this.row(label) + 1)}`);
  }

  row(label: string): number {
    const row = this.at.get(label);
    if (row === undefined) throw new Error(`no cell is called ${label}`);
    return row;
  }

  sheet(): Cell[][] {
    return this.rows.map((cell) => [cell]);
  }
}
