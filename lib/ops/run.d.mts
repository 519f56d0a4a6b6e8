import type { SpawnOptions } from "node:child_process";

/** How one of the project's TypeScript commands is run. */
export function typescriptCommand(file: string): [command: string, args: string[]];

/** Runs a program to its end and returns its exit code and all that it printed. */
export function run(
  command: string,
  args: readonly string[],
  options?: SpawnOptions & { readonly show?: boolean },
): Promise<{ readonly code: number; readonly output: string }>;
