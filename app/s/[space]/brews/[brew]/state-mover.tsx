"use client";

import { useState, useTransition } from "react";
import type { ActionResult } from "@/lib/model/action-result";
import type { BrewState } from "@/lib/model/brew";
import { MoveConfirmation } from "./move-confirmation";
import { movesFrom, type StateMove } from "./state-moves";

interface StateMoverProps {
  readonly brewId: string;
  readonly state: BrewState;
  readonly lockVersion: number;
  readonly move: (input: unknown) => Promise<ActionResult<void>>;
}

/** Moves the brew on; what that means is said before it is done. */
export function StateMover({ brewId, state, lockVersion, move }: StateMoverProps) {
  const [chosen, setChosen] = useState<StateMove | null>(null);
  const { isMoving, problem, send } = useMove(move);

  function confirm(): void {
    if (chosen === null) return;
    send({ id: brewId, state: chosen.to, lockVersion });
    setChosen(null);
  }

  return (
    <div className="no-print mt-3 flex flex-col gap-3">
      <div className="flex flex-wrap gap-3">
        {movesFrom(state).map((each) => (
          <button
            key={each.to}
            type="button"
            className={each.isBack ? "button button-quiet" : "button"}
            aria-haspopup="dialog"
            aria-disabled={isMoving}
            onClick={() => {
              if (!isMoving) setChosen(each);
            }}
          >
            {each.label}
          </button>
        ))}
      </div>
      <p role="status" className={problem === null ? "sr-only" : "field-error"}>
        {isMoving ? "Moving…" : problem}
      </p>
      <MoveConfirmation move={chosen} onConfirm={confirm} onClose={() => setChosen(null)} />
    </div>
  );
}

function useMove(move: StateMoverProps["move"]): {
  readonly isMoving: boolean;
  readonly problem: string | null;
  readonly send: (input: unknown) => void;
} {
  const [problem, setProblem] = useState<string | null>(null);
  const [isMoving, startMoving] = useTransition();
  const send = (input: unknown): void =>
    startMoving(async () => {
      setProblem(await problemOf(move, input));
    });
  return { isMoving, problem, send };
}

async function problemOf(move: StateMoverProps["move"], input: unknown): Promise<string | null> {
  try {
    const answer = await move(input);
    if (answer.status === "ok") return null;
    return answer.status === "refused" ? answer.message : Object.values(answer.fieldErrors).join(". ");
  } catch {
    return "The server did not answer, and the brew is where it was – try again.";
  }
}
