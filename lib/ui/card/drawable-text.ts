/**
 * What the font has that the renderer of pictures brings along: Latin and Cyrillic letters, figures, and the usual
 * marks. For anything else the renderer would ask a font service on the network, which pages of a club do not do.
 */
const IN_FONT =
  /[\u0020-\u007e\u00a0-\u00ac\u00ae-\u0113\u0116-\u012b\u012e-\u0137\u0139-\u013e\u0141-\u0148\u014a-\u014d\u0150-\u017e\u0218-\u021b\u0400-\u045f\u1e9e\u1ea0-\u1ef9\u2013\u2014\u2018-\u201a\u201c-\u201e\u2026]/u;

/** A text with what cannot be drawn left out; an accent that is not there leaves its letter. Empty if nothing remains. */
export function drawableText(text: string): string {
  const drawn = Array.from(text.normalize("NFC"), (character) => {
    if (IN_FONT.test(character)) return character;
    const [letter = ""] = character.normalize("NFD");
    return IN_FONT.test(letter) ? letter : " ";
  });
  return drawn.join("").replaceAll(/\s+/g, " ").trim();
}
