import { memo } from "react";

const RIB_STEP = 5;

/** Ribs run across a band: lines so far apart on the screen at every zoom. */
export const RibPattern = memo(function RibPattern({ scale }: { readonly scale: number }) {
  const step = RIB_STEP / scale;
  return (
    <pattern id="ribLines" width={step} height={step} patternUnits="userSpaceOnUse">
      <path className="ribs" d={`M${step / 2} 0V${step}`} />
    </pattern>
  );
});
