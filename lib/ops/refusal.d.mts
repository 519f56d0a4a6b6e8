/** Why a command does not go on, in one sentence for the person who typed it. */
export class Refusal extends Error {}
