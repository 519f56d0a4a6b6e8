interface Judged {
  readonly notAsked: string | null;
  readonly serious: readonly string[];
  readonly told: readonly string[];
}

/** Sorts an answer of `npm audit --json`; `explained` are the advisories that do not reach this program. */
export function judge(answer: object, explained?: Readonly<Record<string, string>>): Judged;
