import { memo } from "react";
import type { Garment } from "../../bands/garment.ts";
import type { EdgeName, PieceName } from "../../drafting/piece.ts";
import type { Mm } from "../../geometry/units.ts";
import { type SwitchId, switched } from "../fields/alterationFields.ts";
import { type ChoiceFieldId, fieldOf } from "../fields/fields.ts";
import { Clause } from "../page/Clause.tsx";
import { change } from "../state/changes.ts";
import { useIsMade, useOfDrawn } from "../state/made.ts";
import { type Print, printField, usePrint } from "../state/print.ts";
import { put, useStudio, work } from "../state/store.ts";
import { type Say, useSay } from "../words/say.ts";

/** In the method's order: neckline, side seams, hem, sleeve, V. */
const ORDER: readonly SwitchId[] = [
  "moveSideSeams",
  "raiseHem",
  "endSleeve",
  "vInsert",
  "neckline",
];

const RANGED: { readonly [K in SwitchId]?: ChoiceFieldId } = {
  moveSideSeams: "moveSideSeams.by",
  raiseHem: "raiseHem.by",
  endSleeve: "endSleeve.aboveWrist",
};

const lengthOf = ({ pieces }: Garment, name: PieceName, edge: EdgeName): number =>
  pieces.find((piece) => piece.name === name)?.edges.find((found) => found.name === edge)?.length ??
  0;

const lowestOf = ({ pieces }: Garment): number =>
  pieces.find((piece) => piece.name === "back")?.edges.find((edge) => edge.name === "hem")?.path[0]
    .start.y ?? 0;

const resultOf = (garment: Garment, id: SwitchId): number => {
  if (id === "neckline") return garment.bands.neckband.opening;
  if (id === "moveSideSeams") return lengthOf(garment, "front", "side");
  if (id === "raiseHem") return lowestOf(garment);
  if (id === "endSleeve") return lengthOf(garment, "sleeve", "underarmFront");
  return lengthOf(garment, "front", "v");
};

/** How much shorter the insert of a V cut away is; null where there is none to be told. */
const shortOf = (garment: Garment, id: SwitchId): Mm | null =>
  id === "vInsert" && garment.choices.alterations.vInsert.method === "cut-away"
    ? lengthOf(garment, "front", "v") - lengthOf(garment, "vInsert", "left")
    : null;

type Told = { readonly id: SwitchId; readonly result: Mm; readonly short: Mm | null };

const noteOf = ({ id, result, short }: Told, say: Say, p: Print): string => {
  const value = p.full(result);
  const ranged = RANGED[id];
  const range = ranged ? fieldOf(ranged).range : { least: 0, most: 0 };
  if (short !== null) return say("alter.note.vCutAway", { value, short: p.full(short) });
  return say(`alter.note.${id}`, {
    value,
    least: ranged ? printField(ranged, range.least, p) : "",
    most: ranged ? printField(ranged, range.most, p) : "",
  });
};

type IdProps = { readonly id: SwitchId };

/** What the alteration comes to: while a number is pulled it alone is written anew, not its sentence. */
function Result({ id }: IdProps) {
  const say = useSay();
  const p = usePrint();
  const result = useOfDrawn(({ made }) => (made ? resultOf(made.garment, id) : 0));
  const short = useOfDrawn(({ made }) => made && shortOf(made.garment, id));
  return noteOf({ id, result, short }, say, p);
}

const Alteration = memo(function Alteration({ id }: IdProps) {
  const say = useSay();
  const made = useIsMade();
  const on = useStudio((s) => s.history.present.choices.alterations[id].on);
  const name = say(`alter.name.${id}`);
  const press = (to: boolean) => {
    const now = work();
    change({ ...now, choices: switched(now.choices, id, to) }, () =>
      say(to ? "step.on" : "step.off", { what: name }),
    );
  };
  const result = made ? <Result id={id} /> : null;
  const said = on ? result : say(`alter.off.${id}`);
  return <Clause text={say(`alter.${id}`)} button={{ on, name, press }} note={said} />;
});

export function Alterations() {
  const say = useSay();
  const old = useStudio((s) => s.oldLines);
  const made = useIsMade();
  return (
    <>
      {made ? null : <p className="refuse">{say("block.none")}</p>}
      <div className="clauses">
        {ORDER.map((id) => (
          <Alteration key={id} id={id} />
        ))}
      </div>
      <p className="note">
        {say("alter.order")}{" "}
        <button
          type="button"
          className="plainLink"
          aria-pressed={old}
          onClick={() => put({ oldLines: !old })}
        >
          {`${say("alter.both")} ${say(old ? "view.shown" : "view.hidden")}`}
        </button>
      </p>
    </>
  );
}
