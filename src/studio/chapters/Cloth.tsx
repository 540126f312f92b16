import { BODY_CLOTHS } from "../data/cloths.ts";
import { Late, late } from "../guide/Late.tsx";
import { Clause } from "../page/Clause.tsx";
import { useMade } from "../state/made.ts";
import { useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { TableTest } from "./TableTest.tsx";

const ClothNeeded = late(() =>
  import("../guide/ClothNeeded.tsx").then(({ ClothNeeded: needed }) => ({ default: needed })),
);

export function Cloth() {
  const say = useSay();
  const made = useMade();
  const stretch = useStudio((s) => s.history.present.choices.cloth.body.stretch);
  const preset = BODY_CLOTHS.find((cloth) => cloth.stretch === stretch);
  return (
    <>
      <div className="clauses">
        <Clause
          text={say("cloth.body")}
          note={
            preset ? say("cloth.preset.note", { name: say(preset.name) }) : say("cloth.ownNote")
          }
        />
        <Clause text={say("cloth.rib")} />
        <Clause text={say("cloth.shrink")} note={say("cloth.shrinkNote")} />
        <Clause text={say("cloth.turned")} />
        {made ? (
          <Late>
            <ClothNeeded garment={made.garment} />
          </Late>
        ) : null}
      </div>
      <TableTest />
    </>
  );
}
