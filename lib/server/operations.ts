import "server-only";

type Labels = Readonly<Record<string, string | number>>;

/** What lib/ops/observe.mjs puts on the global object of a server; commands and tests run without. */
interface Operations {
  readonly isDraining: boolean;
  readonly request: { readonly getStore: () => { readonly id: string } | undefined };
  readonly log: (level: "info" | "warn" | "error", event: string, facts?: object) => void;
  readonly count: (name: string, labels?: Labels, by?: number) => void;
  readonly observe: (name: string, labels: Labels, seconds: number) => void;
  /** What may be logged of an error. */
  readonly factsOf: (error: unknown) => object;
  readonly gauge: (name: string, read: () => number) => void;
}

export function operations(): Operations | null {
  return (globalThis as typeof globalThis & { readonly gylebookOperations?: Operations }).gylebookOperations ?? null;
}

/** The identifier of the request that the present work belongs to; null outside of one. */
export function requestId(): string | null {
  return operations()?.request.getStore()?.id ?? null;
}
