import "server-only";
import { randomInt } from "node:crypto";

/** Without vowels and without letters that are mistaken for digits: no words, and easy to read out. */
const LETTERS = "bcdfghjkmnpqrstvwxz23456789";
const LETTERS_IN_ADDRESS = 8;
const LONGEST_NAME = 60;

/** A public address that can be read out, and not guessed from a title. */
export function addressFor(title: string): string {
  const plain = title.normalize("NFKD").toLowerCase().replaceAll(/\p{M}/gu, "");
  const words = plain
    .replaceAll(/[^a-z0-9]+/g, "-")
    .slice(0, LONGEST_NAME)
    .replaceAll(/^-+|-+$/g, "");
  const letters = Array.from({ length: LETTERS_IN_ADDRESS }, () => LETTERS[randomInt(LETTERS.length)]).join("");
  return words === "" ? letters : `${words}-${letters}`;
}
