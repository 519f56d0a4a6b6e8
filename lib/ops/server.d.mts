interface Server {
  /** Fulfilled when the process is gone. */
  readonly ended: Promise<unknown>;
  /** Ends it at once. */
  readonly kill: () => void;
}

/** The environment of a server that is there for one run only. */
export function passingEnvironment(a: { readonly databaseUrl: string; readonly origin: string }): NodeJS.ProcessEnv;

/** Serves what was built last; fulfilled once it answers. */
export function serve(a: {
  readonly host: string;
  readonly port: number;
  readonly env: NodeJS.ProcessEnv;
}): Promise<Server>;
