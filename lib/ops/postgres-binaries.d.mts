interface Postgres {
  /** The folder of its programs. */
  readonly bin: string;
  /** Whom they run as; empty where that is who runs this. */
  readonly user: { readonly uid?: number; readonly gid?: number };
  /** Where its data may be. */
  readonly home: string;
}

export function findPostgres(): Promise<Postgres>;
export function program(name: string): string;
