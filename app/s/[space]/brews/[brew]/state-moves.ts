import { BREW_STATES, type BrewState } from "@/lib/model/brew";

/** One way a brew can go on, with what it means. */
export interface StateMove {
  readonly to: BrewState;
  readonly label: string;
  readonly meaning: string;
  readonly isBack: boolean;
}

const FORWARD: Readonly<Record<Exclude<BrewState, "planned">, Omit<StateMove, "to" | "isBack">>> = {
  "on the kettle": {
    label: "Start the brew day",
    meaning: "The brew day starts now: every step gets its clock time, counted from this moment.",
  },
  "in the fermenter": {
    label: "Into the fermenter",
    meaning: "The wort is in the fermenter and the yeast is pitched. What is measured from now on is of the beer.",
  },
  "in package": {
    label: "Packaged",
    meaning:
      "The beer is in bottles or kegs. Package only when the gravity has stopped falling: what ferments on raises the pressure, and glass breaks.",
  },
  closed: {
    label: "Close the log",
    meaning: "Nothing more is measured. The log stays as it is for everybody to read, and can be opened again.",
  },
};

const BACK: Readonly<Record<Exclude<BrewState, "closed">, Omit<StateMove, "to" | "isBack">>> = {
  planned: {
    label: "Back to planned",
    meaning: "The start is forgotten and the steps lose their clock times. Readings stay in the log.",
  },
  "on the kettle": { label: "Back to the kettle", meaning: "The brew day goes on. Start and readings stay." },
  "in the fermenter": { label: "Back to the fermenter", meaning: "The beer is not packaged yet. Readings stay." },
  "in package": { label: "Open the log again", meaning: "Readings can be entered again." },
};

/** Where a brew can go from here: one state on, and one back for a tap too early. */
export function movesFrom(state: BrewState): readonly StateMove[] {
  const at = BREW_STATES.indexOf(state);
  const [next, previous] = [BREW_STATES[at + 1], BREW_STATES[at - 1]];
  return [
    ...(next === undefined || next === "planned" ? [] : [{ to: next, isBack: false, ...FORWARD[next] }]),
    ...(previous === undefined || previous === "closed" ? [] : [{ to: previous, isBack: true, ...BACK[previous] }]),
  ];
}
