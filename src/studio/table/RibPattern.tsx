const RIB_STEP = 5;

/** Ribs run across a band: lines so far apart on the screen at every zoom. */
export function RibPattern({ scale }: { readonly scale: number }) {
  const step = RIB_STEP / scale;
  return (
    <pattern id="ribLines" width={step} height={step} patternUnits="userSpaceOnUse">
      <path className="ribs" d={`M${step / 2} 0V${step}`} />
    </pattern>
  );
}
