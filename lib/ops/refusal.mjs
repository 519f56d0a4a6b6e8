/** Why a command does not go on, in one sentence for the person who typed it. Anything else is a defect of ours. */
export class Refusal extends Error {
  name = "Refusal";
}

/** Runs a command and sets its exit code. */
export async function runCommand(work) {
  try {
    process.exitCode = (await work()) ?? 0;
  } catch (error) {
    console.error(error instanceof Refusal ? error.message : error);
    process.exitCode = 1;
  }
}
