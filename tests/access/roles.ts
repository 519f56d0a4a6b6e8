import type { Role } from "@/lib/model/roles";

/** Everybody who may come to an address, seen from the demo club: without a session that holds, without a place in it, and in it. */
export const STRANGERS = ["anonymous", "closed"] as const;
export const OUTSIDERS = ["former", "outsider"] as const;
export const INSIDERS = ["guest", "judge", "steward", "member", "organiser"] as const satisfies readonly Role[];
export const EVERYBODY = [...STRANGERS, ...OUTSIDERS, ...INSIDERS] as const;

export type Insider = (typeof INSIDERS)[number];
export type Person = (typeof EVERYBODY)[number];
