import type { StationBalance, Stream } from "@/lib/calc/ledger";
import type { Preferences } from "@/lib/model/preferences";
import { formatQuantity } from "./format-quantity";

type Substance = "kg" | "extractKg";

/** "Mass in 30.1 kg = lost 4.0 kg + out 26.1 kg; extract in …": a station's balance in one line. */
export function balanceText(balance: StationBalance, preferences: Preferences): string {
  const hasExtract = sum(balance.in, "extractKg") > 0;
  const extract = hasExtract ? `; extract ${equation(balance, "extractKg", preferences)}` : "";
  return `Mass ${equation(balance, "kg", preferences)}${extract}`;
}

export function balanceAmount(kg: number, preferences: Preferences): string {
  const { text, unit } = formatQuantity({ value: kg, dimension: "mass", preferences });
  return `${text} ${unit}`;
}

function equation({ in: flowsIn, lost, out }: StationBalance, of: Substance, preferences: Preferences): string {
  const [into, gone, onward] = [flowsIn, lost, out].map((streams) => balanceAmount(sum(streams, of), preferences));
  return `in ${into ?? ""} = lost ${gone ?? ""} + out ${onward ?? ""}`;
}

function sum(streams: readonly Stream[], of: Substance): number {
  return streams.reduce((total, stream) => total + stream[of], 0);
}
