import type { Role } from "@/lib/model/roles";

/** The demo club and everybody in it are invented; so is the place. */
export const DEMO_CLUB = { name: "Hollowmere Brewing Circle (demo)", slug: "hollowmere" } as const;

/** For the demo only: it is printed at the start and stands in the README. */
export const DEMO_PASSWORD = "hollowmere-demo-gyle";

export interface DemoPerson {
  readonly key: string;
  readonly name: string;
  readonly email: string;
  readonly role: Role;
}

const person = (key: string, name: string, role: Role): DemoPerson => ({
  key,
  name,
  role,
  email: `${key}@hollowmere.example`,
});

/** The first one founds the club. */
export const DEMO_PEOPLE: readonly DemoPerson[] = [
  person("organiser", "Orla Fennimoor", "organiser"),
  person("member", "Mads Underbough", "member"),
  person("tamsin", "Tamsin Greywick", "member"),
  person("bero", "Bero Alderholt", "member"),
  person("wilma", "Wilma Sandpeck", "member"),
  person("ivo", "Ivo Thistlecott", "member"),
  person("petra", "Petra Lowmarsh", "member"),
  person("kasper", "Kasper Oldfurrow", "member"),
  person("dunja", "Dunja Highstead", "member"),
  person("emrys", "Emrys Copperlea", "member"),
  person("sunniva", "Sunniva Brackwater", "member"),
  person("judge", "Jorun Palewell", "judge"),
  person("steward", "Sefa Quillbridge", "steward"),
];

/** Somebody outside the club, so that the wall between spaces can be seen from the other side. */
export const DEMO_OUTSIDER: DemoPerson = {
  key: "outsider",
  name: "Otto Farfield",
  email: "outsider@farfield.example",
  role: "organiser",
};
export const OTHER_CLUB = { name: "Farfield Ale Society (demo)", slug: "farfield" } as const;
