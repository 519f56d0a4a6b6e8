import type { Ledger, Phase, PhaseName, Station, Stream } from "../ledger";

/**
 * Finds a flow in the balance of a station.
 *
 * @returns Mass and extract of the flow, kg; null where the station has none of that name.
 */
export function flowOf(ledger: Ledger, station: Station, side: "in" | "lost" | "out", name: string): Stream | null {
  const balance = ledger.balances.find((each) => each.station === station);
  return balance?.[side].find((stream) => stream.name === name) ?? null;
}

/**
 * Adds up the time that the brew day spends in phases of some names.
 *
 * @returns Time, min.
 */
export function minutesIn(ledger: Ledger, ...names: readonly PhaseName[]): number {
  return phasesOf(ledger, names).reduce((sum, phase) => sum + phase.minutes, 0);
}

/**
 * Adds up the electricity that phases of some names take.
 *
 * @returns Energy, kWh.
 */
export function energyIn(ledger: Ledger, ...names: readonly PhaseName[]): number {
  return phasesOf(ledger, names).reduce((sum, phase) => sum + (phase.powerW * phase.minutes) / 60_000, 0);
}

/**
 * Finds the first phase of a name.
 *
 * @returns The phase, or null where the day has none.
 */
export function firstPhase(ledger: Ledger, name: PhaseName): Phase | null {
  return ledger.phases.find((phase) => phase.name === name) ?? null;
}

function phasesOf(ledger: Ledger, names: readonly PhaseName[]): readonly Phase[] {
  return ledger.phases.filter((phase) => names.includes(phase.name));
}
