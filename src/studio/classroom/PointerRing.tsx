import { useEffect, useRef } from "react";

/** A ring round the pointer that stays where it was left: seen from the back of a room. */
export function PointerRing() {
  const ring = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const follow = ({ clientX, clientY }: PointerEvent) => {
      const found = ring.current;
      if (!found) return;
      found.hidden = false;
      found.style.transform = `translate(${clientX}px, ${clientY}px)`;
    };
    addEventListener("pointermove", follow);
    return () => removeEventListener("pointermove", follow);
  }, []);
  return <div ref={ring} className="pointerRing" aria-hidden="true" hidden />;
}
