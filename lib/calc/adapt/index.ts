export type { Intention, IntendedFermentable, IntendedHop, WayOut, WayOutKind } from "./intention";
