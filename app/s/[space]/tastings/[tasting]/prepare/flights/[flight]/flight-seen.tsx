/** The flight and the version of the draft that a form was made from. */
export interface FlightAsSeen {
  readonly lockVersion: number;
  readonly flightNo: number;
}

export function FlightSeen({ lockVersion, flightNo }: FlightAsSeen) {
  return (
    <>
      <input type="hidden" name="lockVersion" value={lockVersion} />
      <input type="hidden" name="flightNo" value={flightNo} />
    </>
  );
}
