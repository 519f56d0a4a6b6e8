/** A table as it comes from a spreadsheet or a file: cells parted by tabs, semicolons or commas, quoted or not. */
export function splitTable(text: string): readonly (readonly string[])[] {
  const delimiter = delimiterOf(text);
  const rows: string[][] = [];
  let row: string[] = [];
  let cell = "";
  let isQuoted = false;
  const endCell = (): void => {
    row.push(cell.trim());
    cell = "";
  };
  const endRow = (): void => {
    endCell();
    if (row.some((each) => each !== "")) rows.push(row);
    row = [];
  };
  const written = text.replaceAll(/\r\n?/g, "\n");
  for (let at = 0; at < written.length; at++) {
    const sign = written.charAt(at);
    if (isQuoted) {
      if (sign !== '"') cell += sign;
      else if (written.charAt(at + 1) === '"') cell += written.charAt(++at);
      else isQuoted = false;
    } else if (sign === '"' && cell.trim() === "") {
      isQuoted = true;
      cell = "";
    } else if (sign === delimiter) endCell();
    else if (sign === "\n") endRow();
    else cell += sign;
  }
  endRow();
  return rows;
}

/** A comma parts cells only where nothing else does: in most of the world it is the decimal mark. */
function delimiterOf(text: string): string {
  return ["\t", ";"].find((sign) => text.includes(sign)) ?? ",";
}
