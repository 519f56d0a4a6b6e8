import "server-only";

/** Nobody's space: in it the database shows the commons and nothing else. */
export const NOWHERE = "00000000-0000-0000-0000-000000000000";
