interface Database {
  /** Its address, for an account that owns it and may make other databases. */
  readonly url: string;
  /** Its address, for somebody who may read and do everything: for backups. */
  readonly superuserUrl: string;
  /** Another command runs it, and this one does not stop it. */
  readonly shared: boolean;
  readonly stop: () => Promise<void>;
}

/** Starts the database whose data are kept between runs. */
export function startKeptDatabase(name: string): Promise<Database>;

/** Starts a database in a temporary folder, which goes when it is stopped; `flags` are those of its server. */
export function startThrowAwayDatabase(
  name: string,
  options?: { readonly flags?: readonly string[] },
): Promise<Database>;
