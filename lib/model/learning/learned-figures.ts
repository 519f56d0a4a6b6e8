import {
  calibrate,
  driftTest,
  pool,
  type BrewFit,
  type Drift,
  type KettleOfKind,
  type KindFigure,
  type LearnedFigure,
} from "@/lib/calc/learn";
import { FIGURES, type Equipment, type Figure, type FigureCorrelation, type FigureName } from "@/lib/calc/ledger";
import { EQUIPMENT_FIELDS } from "../equipment-fields";

/** A change that chance makes less often than this in any of the figures is told. */
const TOLD_BELOW = 0.05;

/** One figure of a profile with what brews say of it. */
export interface LearnedRow {
  readonly name: FigureName;
  readonly label: string;
  readonly now: Figure<number>;
  /** By the brews on this kettle and what was known before; null where none of them tells of it. */
  readonly own: LearnedFigure | null;
  /** Of all kettles of the kind, at this size; null while this one is the only one. */
  readonly kind: KindFigure | null;
  /** What the profile may take; null where neither this kettle nor its kind tells anything. */
  readonly proposed: Figure<number> | null;
  readonly drift: Drift | null;
}

export interface LearnedProfile {
  readonly rows: readonly LearnedRow[];
  /** Which of the proposed figures are off together. */
  readonly correlations: readonly FigureCorrelation[];
  /** How each brew fits, in the order given. */
  readonly fits: readonly BrewFit[];
  readonly kettles: number;
}

/**
 * What the brews on one kettle, and on the others of its kind in the club, say of its figures.
 *
 * @param a.profile - As it is now.
 * @param a.kettle - The same before its brews, what is typical of it, and what its brews say, in order of time.
 * @param a.others - Other kettles of the kind of which brews tell.
 */
export function learnedProfile(a: {
  readonly profile: Equipment;
  readonly kettle: KettleOfKind;
  readonly others: readonly KettleOfKind[];
}): LearnedProfile {
  const { profile, kettle, others } = a;
  const { equipment, brews, typical } = kettle;
  const own = calibrate({ equipment, brews });
  const drifts = driftTest({ equipment, brews }).filter(({ pOfAny }) => pOfAny < TOLD_BELOW);
  const pooled = others.length === 0 ? null : pool({ start: typical, kettles: [kettle, ...others] });
  const rows = FIGURES.map(({ name, of }): LearnedRow => {
    const learned = own.figures.find((figure) => figure.name === name && figure.brews > 0) ?? null;
    const shared = pooled?.kettles[0]?.figures.find((figure) => figure.name === name && figure.kindKettles > 0) ?? null;
    const basis = basisOf({
      own: learned?.brews ?? 0,
      others: (shared?.kindBrews ?? 0) - (shared?.brews ?? 0),
      kettles: (shared?.kindKettles ?? 0) - (learned !== null || isTold(of(equipment)) ? 1 : 0),
    });
    const found = shared?.figure ?? learned?.figure ?? null;
    return {
      ...{ name, label: EQUIPMENT_FIELDS[name].label, now: of(profile), own: learned },
      kind: pooled?.figures.find((figure) => figure.name === name && figure.kettles > 0) ?? null,
      proposed: found === null || basis === null || found.from !== "learned" ? null : { ...found, basis },
      drift: drifts.find((drift) => drift.name === name) ?? null,
    };
  });
  const correlations = pooled?.kettles[0]?.correlations ?? own.correlations;
  return { rows, correlations, fits: own.brews, kettles: 1 + others.length };
}

/** The profile with the figures of these names as they are proposed, tied to each other as they were learned. */
export function withLearned(
  profile: Equipment,
  { rows, correlations }: Pick<LearnedProfile, "rows" | "correlations">,
  names: ReadonlySet<FigureName>,
): Equipment {
  const taken = new Set<FigureName>();
  const made = FIGURES.reduce((before, { name, withFigure }) => {
    const proposed = names.has(name) ? rows.find((row) => row.name === name)?.proposed : null;
    if (proposed === null || proposed === undefined) return before;
    taken.add(name);
    return withFigure(before, proposed);
  }, profile);
  return tied(made, correlations, taken);
}

/** A figure that was not taken has another value and error than the one that the others were learned with. */
function tied(
  equipment: Equipment,
  correlations: readonly FigureCorrelation[],
  taken: ReadonlySet<FigureName>,
): Equipment {
  const found = correlations.filter(({ one, other }) => taken.has(one) && taken.has(other));
  if (found.length === 0) return equipment;
  return { ...equipment, correlations: [...(equipment.correlations ?? []), ...found] };
}

/** The profile that a new kettle begins with: what is typical, but for figures of which kettles of its kind tell. */
export function startedFromKind(typical: Equipment, kettles: readonly KettleOfKind[]): Equipment {
  if (kettles.length === 0) return typical;
  const { figures, correlations } = pool({ start: typical, kettles }).start;
  const taken = new Set<FigureName>();
  const made = FIGURES.reduce((before, { name, withFigure }) => {
    const found = figures.find((figure) => figure.name === name);
    const basis = basisOf({ own: 0, others: found?.kindBrews ?? 0, kettles: found?.kindKettles ?? 0 });
    if (found === undefined || basis === null || found.figure.from !== "learned") return before;
    taken.add(name);
    return withFigure(before, { ...found.figure, basis });
  }, typical);
  return tied(made, correlations, taken);
}

/** What a figure rests on, in words; null where nothing tells of it but the profile itself. */
function basisOf(a: { readonly own: number; readonly others: number; readonly kettles: number }): string | null {
  const brews = (count: number): string => `${String(count)} ${count === 1 ? "brew" : "brews"}`;
  if (a.own > 0 && a.others > 0) return `${brews(a.own)} on this kettle and ${String(a.others)} on others of its kind`;
  if (a.own > 0) return `${brews(a.own)} on this kettle`;
  if (a.others > 0) return `${brews(a.others)} on other kettles of its kind`;
  return a.kettles > 0 ? "trials with other kettles of its kind" : null;
}

/** Whether somebody measured the figure or stated it, beside brews. */
export function isTold({ from }: Figure<number>): boolean {
  return from === "measured" || from === "stated";
}
