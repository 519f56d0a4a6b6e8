import { randomUUID } from "node:crypto";
import type { Verdict } from "./writer";

/** What is found of one name in the end. */
export interface NamedRow {
  readonly name: string;
  readonly count: number;
  /** Whether everything is there that is written with it. */
  readonly whole: boolean;
}

/** Things that are written once each, under names that nobody else gives. */
export class NamedWrites {
  private readonly tried: string[] = [];
  private readonly acknowledged = new Set<string>();

  /** Writes the next one; whether it was acknowledged. */
  async write(send: (name: string) => Promise<boolean>): Promise<boolean> {
    const name = `Tried ${randomUUID()}`;
    this.tried.push(name);
    const isKept = await send(name);
    if (isKept) this.acknowledged.add(name);
    return isKept;
  }

  async judge(find: (names: string[]) => Promise<readonly NamedRow[]>): Promise<Verdict> {
    const rows = await find(this.tried);
    const there = new Set(rows.map(({ name }) => name));
    return {
      acknowledged: this.acknowledged.size,
      lost: [...this.acknowledged].filter((name) => !there.has(name)).length,
      doubled: rows.filter(({ count }) => count > 1).length,
      halfWritten: rows.filter(({ whole }) => !whole).length,
    };
  }
}
