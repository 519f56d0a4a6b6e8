/** Why a command does not go on, in one sentence for the person who typed it. Anything else is a defect of ours. */
export class Refusal extends Error {
  name = "Refusal";
}
