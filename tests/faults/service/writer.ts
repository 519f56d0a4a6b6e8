import type { readActions } from "../../bench/load/actions";

/** What all writers share: the way to the server, and what everybody was told. */
export interface Setting {
  readonly origin: string;
  readonly slug: string;
  readonly actionOf: Awaited<ReturnType<typeof readActions>>;
  readonly cookieOf: (reference: string) => Readonly<Record<string, string>>;
}

/** What one writer was told is kept, against what is there in the end. */
export interface Verdict {
  readonly acknowledged: number;
  /** Acknowledged, and not there or with something else in it. */
  readonly lost: number;
  readonly doubled: number;
  /** There, but without a part that is written with it. */
  readonly halfWritten: number;
}

/** Somebody who writes one kind of thing, again and again. */
export interface Writer {
  readonly kind: string;
  /** Writes once; whether it was acknowledged. */
  readonly write: () => Promise<boolean>;
  /** Writes again what was never acknowledged, where that is harmless; whether nothing is left. */
  readonly drain?: () => Promise<boolean>;
  readonly judge: () => Promise<Verdict>;
}
