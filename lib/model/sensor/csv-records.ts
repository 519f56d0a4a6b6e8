/** One record of a CSV text, with the line on which it begins. */
export interface CsvRecord {
  readonly line: number;
  readonly cells: readonly string[];
}

/** A text that is no CSV, in words for whoever sent it. */
export class CsvError extends Error {
  override readonly name = "CsvError";
}

const LONGEST_CELL = 2000;
const MOST_CELLS = 40;

/**
 * Reads RFC 4180 text as it comes in, in pieces that end anywhere, and keeps no more of it than one record. Both line
 * ends are taken, and a byte order mark.
 */
export class CsvRecords {
  #found: CsvRecord[] = [];
  #cells: string[] = [];
  #cell = "";
  #state: "start" | "plain" | "quoted" | "closed" = "start";
  #line = 1;
  #begun = 1;
  #isFirst = true;

  /** The records that end in this piece. */
  read(text: string): readonly CsvRecord[] {
    for (const sign of this.#isFirst ? text.replace(/^\uFEFF/, "") : text) {
      if (this.#state === "quoted") this.#readQuoted(sign);
      else this.#readPlain(sign);
      if (sign === "\n") this.#line += 1;
    }
    this.#isFirst &&= text === "";
    return this.#taken();
  }

  /** The record that ends with the text. */
  end(): readonly CsvRecord[] {
    if (this.#state === "quoted") throw this.#error("a quote is not closed", this.#begun);
    this.#endRecord();
    return this.#taken();
  }

  #readQuoted(sign: string): void {
    if (sign === '"') this.#state = "closed";
    else this.#add(sign);
  }

  #readPlain(sign: string): void {
    if (sign === ",") this.#endCell();
    else if (sign === "\n") this.#endRecord();
    else if (sign === "\r") return;
    else if (sign === '"' && this.#state === "start") this.#state = "quoted";
    else if (sign === '"' && this.#state === "closed") {
      this.#add(sign);
      this.#state = "quoted";
    } else if (this.#state === "closed") throw this.#error("there is something between a closing quote and the comma");
    else {
      this.#add(sign);
      this.#state = "plain";
    }
  }

  #add(sign: string): void {
    if (this.#cell.length >= LONGEST_CELL) {
      throw this.#error(`a cell has more than ${String(LONGEST_CELL)} characters`);
    }
    this.#cell += sign;
  }

  #endCell(): void {
    if (this.#cells.length >= MOST_CELLS) throw this.#error(`there are more than ${String(MOST_CELLS)} columns`);
    this.#cells.push(this.#cell);
    this.#cell = "";
    this.#state = "start";
  }

  #endRecord(): void {
    const isBlank = this.#cells.length === 0 && this.#state === "start";
    if (!isBlank) {
      this.#endCell();
      this.#found.push({ line: this.#begun, cells: this.#cells });
    }
    this.#cells = [];
    this.#begun = this.#line + 1;
  }

  #taken(): readonly CsvRecord[] {
    const found = this.#found;
    this.#found = [];
    return found;
  }

  #error(reason: string, line = this.#line): CsvError {
    return new CsvError(`line ${String(line)}: ${reason}`);
  }
}
