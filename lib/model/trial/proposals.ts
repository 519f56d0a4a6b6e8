import { elementPower } from "@/lib/calc/heat";
import type { Estimate } from "@/lib/calc/learn";
import type { Dimension, Equipment, Figure, FigureCorrelation, FigureOrigin, KettleDipStick } from "@/lib/calc/ledger";
import { fraction, joulesPerKelvin, kilogramsPerHour, litres, wattsPerKelvin } from "@/lib/calc/units";
import { EQUIPMENT_FIELDS } from "../equipment-fields";
import type { TrialResults } from "./trial-results";

/** What a trial may put into a profile. */
export const PROPOSED_FIGURES = [
  "kettle.dipStick",
  "kettle.heatShare",
  "kettle.lossCoefficient",
  "kettle.heatCapacity",
  "kettle.boilOff",
  "kettle.trub",
  "kettle.transfer",
  "lauter.deadSpace",
  "chiller.conductance",
] as const;
export type ProposedFigure = (typeof PROPOSED_FIGURES)[number];

/** One figure that the brewer may take into the profile, beside what stands there. */
export interface Proposal {
  readonly figure: ProposedFigure;
  readonly label: string;
  readonly dimension: Dimension;
  readonly before: { readonly value: number; readonly sd: number | null; readonly from: FigureOrigin | null } | null;
  /** The value, or what the last mark of a table holds. */
  readonly after: { readonly value: number; readonly sd: number };
  readonly basis: string;
  /** What should be thought of before it is taken. */
  readonly doubt: string | null;
  readonly apply: (equipment: Equipment) => Equipment;
}

interface Trial {
  readonly results: TrialResults;
  readonly equipment: Equipment;
  /** "29 Nov 2026". */
  readonly day: string;
}

/** Which of the figures taken are off together, since one trial told them: power and loss. */
export function tiesOf({ heating }: TrialResults, taken: readonly ProposedFigure[]): readonly FigureCorrelation[] {
  const [one, other] = ["kettle.heatShare", "kettle.lossCoefficient"] as const;
  const found = heating?.outcome;
  if (found?.ok !== true || found.power === null || !taken.includes(one) || !taken.includes(other)) return [];
  return [{ one, other, coefficient: found.correlation }];
}

/** All figures that a trial tells, in the order of the profile. */
export function proposalsOf(trial: Trial): readonly Proposal[] {
  return [
    ...dipStickProposal(trial),
    ...heatingProposals(trial),
    ...boilOffProposal(trial),
    ...volumeProposals(trial),
    ...chillProposal(trial),
  ];
}

function basisOf({ day }: Trial, count: number): string {
  return `commissioning trial of ${day}, ${String(count)} ${count === 1 ? "reading" : "readings"}`;
}

function measured<Q extends number>(
  make: (value: number) => Q,
  { value, sd }: Proposal["after"],
  basis: string,
): Figure<Q> {
  return { value: make(value), sd, from: "measured", count: 1, basis };
}

const afterOf = ({ value, standardError }: Estimate): Proposal["after"] => ({ value, sd: standardError });
const beforeOf = ({ value, sd, from }: Figure<number>): Proposal["before"] => ({ value, sd, from });

function dipStickProposal(trial: Trial): readonly Proposal[] {
  const { marks } = trial.results;
  if (marks?.outcome?.ok !== true) return [];
  const basis = basisOf(trial, marks.count);
  const dipStick: KettleDipStick = { ...marks.outcome.table, basis };
  const [last, old] = [dipStick.marks.at(-1), trial.equipment.kettle.dipStick?.marks.at(-1)];
  if (last === undefined) return [];
  return [
    {
      figure: "kettle.dipStick",
      label: `Dip-stick, ${String(dipStick.marks.length)} marks, the last one`,
      dimension: "volume",
      before: old === undefined ? null : { value: old.litres, sd: old.sd, from: null },
      after: { value: last.litres, sd: last.sd },
      basis,
      doubt:
        last.litres > trial.equipment.kettle.capacity
          ? "This is more than the profile says that the kettle holds."
          : null,
      apply: (e) => ({ ...e, kettle: { ...e.kettle, dipStick } }),
    },
  ];
}

function heatingProposals(trial: Trial): readonly Proposal[] {
  const { results, equipment } = trial;
  const found = results.heating?.outcome;
  if (found?.ok !== true) return [];
  const { kettle } = equipment;
  const basis = basisOf(trial, results.heating?.count ?? 0);
  const loss = afterOf(found.lossCoefficient);
  const vessel = found.vesselHeatCapacity === null ? null : afterOf(found.vesselHeatCapacity);
  return [
    ...(found.power === null ? [] : [heatShareProposal(trial, found.power, basis)]),
    {
      figure: "kettle.lossCoefficient",
      label: EQUIPMENT_FIELDS["kettle.lossCoefficient"].label,
      dimension: "heatLoss",
      before: beforeOf(kettle.lossCoefficient),
      after: loss,
      basis,
      doubt: null,
      apply: (e) => ({ ...e, kettle: { ...e.kettle, lossCoefficient: measured(wattsPerKelvin, loss, basis) } }),
    },
    ...(vessel === null
      ? []
      : [
          {
            figure: "kettle.heatCapacity" as const,
            label: EQUIPMENT_FIELDS["kettle.heatCapacity"].label,
            dimension: "heatCapacity" as const,
            before: { value: kettle.heatCapacity, sd: null, from: null },
            after: vessel,
            basis,
            doubt: null,
            apply: (e: Equipment): Equipment => ({
              ...e,
              kettle: { ...e.kettle, heatCapacity: joulesPerKelvin(vessel.value) },
            }),
          },
        ]),
  ];
}

function heatShareProposal({ equipment: { kettle } }: Trial, power: Estimate, basis: string): Proposal {
  const drawnW = elementPower({
    ratedW: kettle.ratedPower,
    ratedV: kettle.ratedVoltage,
    supplyV: kettle.supplyVoltage,
  });
  const share = power.value / drawnW;
  // No heater gives more than it draws: one that seems to is taken as giving all, and said to.
  const after = { value: Math.min(1, share), sd: Math.min(0.5, power.standardError / drawnW) };
  const isFar = power.value - 2 * power.standardError > drawnW;
  return {
    figure: "kettle.heatShare",
    label: EQUIPMENT_FIELDS["kettle.heatShare"].label,
    dimension: "fraction",
    before: beforeOf(kettle.heatShare),
    after,
    basis,
    doubt: isFar
      ? "More heat arrived than the heater draws by the profile: look at rated power, supply voltage and the litres of water before you take this."
      : null,
    apply: (e) => ({ ...e, kettle: { ...e.kettle, heatShare: measured(fraction, after, basis) } }),
  };
}

function boilOffProposal(trial: Trial): readonly Proposal[] {
  const { boilOff } = trial.results;
  if (boilOff?.outcome?.ok !== true) return [];
  const found = { figure: "kettle.boilOff", dimension: "evaporation", after: afterOf(boilOff.outcome.rate) } as const;
  return rateProposal(trial, boilOff.count, found, trial.equipment.kettle.boilOff, (e, after, basis) => ({
    ...e,
    kettle: { ...e.kettle, boilOff: measured(kilogramsPerHour, after, basis) },
  }));
}

function volumeProposals(trial: Trial): readonly Proposal[] {
  const { deadSpace } = trial.results;
  const { kettle, lauter } = trial.equipment;
  const of = (
    where: keyof typeof deadSpace,
    figure: "kettle.trub" | "kettle.transfer" | "lauter.deadSpace",
    before: Figure<number>,
    put: (equipment: Equipment, figure: Figure<ReturnType<typeof litres>>) => Equipment,
    doubt: string | null,
  ): readonly Proposal[] => {
    const found = deadSpace[where];
    if (found?.outcome?.ok !== true) return [];
    const after = afterOf(found.outcome.volume);
    const basis = basisOf(trial, found.count);
    const { label } = EQUIPMENT_FIELDS[figure];
    const apply = (e: Equipment): Equipment => put(e, measured(litres, after, basis));
    return [{ figure, label, dimension: "volume", before: beforeOf(before), after, basis, doubt, apply }];
  };
  return [
    ...of(
      "kettle",
      "kettle.trub",
      kettle.trub,
      (e, trub) => ({ ...e, kettle: { ...e.kettle, trub } }),
      "Water leaves less than wort does: trub and hops lie on top of it. Take this only if your brews leave no more.",
    ),
    ...of(
      "transfer",
      "kettle.transfer",
      kettle.transfer,
      (e, transfer) => ({ ...e, kettle: { ...e.kettle, transfer } }),
      null,
    ),
    ...of(
      "mash",
      "lauter.deadSpace",
      lauter.deadSpace,
      (e, deadSpaceOf) => ({ ...e, lauter: { ...e.lauter, deadSpace: deadSpaceOf } }),
      null,
    ),
  ];
}

function chillProposal(trial: Trial): readonly Proposal[] {
  const { chill } = trial.results;
  if (chill?.outcome?.ok !== true) return [];
  const after = afterOf(chill.outcome.conductance);
  const found = { figure: "chiller.conductance", dimension: "heatLoss", after } as const;
  return rateProposal(trial, chill.count, found, trial.equipment.chiller.conductance, (e, value, basis) => ({
    ...e,
    chiller: { ...e.chiller, conductance: measured(wattsPerKelvin, value, basis) },
  }));
}

/** A figure that is one number of the profile, taken as it was measured. */
function rateProposal(
  trial: Trial,
  count: number,
  found: Pick<Proposal, "dimension" | "after"> & { readonly figure: "kettle.boilOff" | "chiller.conductance" },
  before: Figure<number>,
  put: (equipment: Equipment, after: Proposal["after"], basis: string) => Equipment,
): readonly Proposal[] {
  const { figure, after } = found;
  const basis = basisOf(trial, count);
  const { label } = EQUIPMENT_FIELDS[figure];
  return [{ ...found, label, before: beforeOf(before), basis, doubt: null, apply: (e) => put(e, after, basis) }];
}
