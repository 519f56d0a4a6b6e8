/** What is to be done for a row: the row itself, and then its intervals. */
export interface KettleJob {
  readonly id: string;
  readonly part: "figures" | "intervals";
}

/** Which row is computed next: those in view first, and no interval before every row is there. */
export class KettleQueue {
  private readonly figures = new Set<string>();
  private readonly intervals = new Set<string>();
  private looked: readonly string[] = [];

  /** Puts a row in line, whole. */
  add(id: string): void {
    this.figures.add(id);
    this.intervals.add(id);
  }

  look(ids: readonly string[]): void {
    this.looked = ids;
  }

  get isEmpty(): boolean {
    return this.figures.size === 0 && this.intervals.size === 0;
  }

  /** Takes the next job out; null when there is none. */
  take(): KettleJob | null {
    return (
      this.takeFrom("figures", this.looked) ??
      this.takeFrom("figures", this.figures) ??
      this.takeFrom("intervals", this.looked) ??
      this.takeFrom("intervals", this.intervals)
    );
  }

  private takeFrom(part: KettleJob["part"], ids: Iterable<string>): KettleJob | null {
    const waiting = this[part];
    for (const id of ids) if (waiting.delete(id)) return { id, part };
    return null;
  }
}
