import type { Told } from "../../trace/told.ts";
import { usePrint } from "../state/print.ts";
import { useEye } from "./eye.ts";
import { FaultNote } from "./FaultNote.tsx";
import type { Lack } from "./marks.ts";
import type { Placing } from "./photoJobs.ts";
import { usePhotoSay } from "./photoSay.ts";
import { toTable } from "./traceActions.ts";

type ForetoldProps = { readonly placing: Placing; readonly isShort?: boolean };

/** What error to expect; in short where the line is traced already. */
export function Foretold({ placing, isShort = false }: ForetoldProps) {
  const say = usePhotoSay();
  const p = usePrint();
  const { foretold, crooked } = placing;
  return (
    <>
      <p className={isShort ? "note" : "said"} data-foretold>
        {foretold
          ? say("photo.placed", { worst: p.full(foretold.worst), usual: p.full(foretold.usual) })
          : say("photo.placed.scale")}
      </p>
      {crooked === null || isShort ? null : (
        <p className="note">{say("photo.placed.crooked", { px: p.number(crooked, 1) })}</p>
      )}
    </>
  );
}

type Props = { readonly lack: Lack; readonly told: Told<Placing> | null };

/** What error is to be expected, before anything is traced; or what is missing, or wrong. */
export function PlacedClause({ lack, told }: Props) {
  const say = usePhotoSay();
  const isBusy = useEye((s) => s.busy !== null);
  const isPlaced = told !== null && "found" in told;
  return (
    <div className="clause plain" aria-live="polite">
      {lack === null ? null : <p className="note">{say(`photo.lack.${lack}`)}</p>}
      {lack === null && told === null ? <p className="note">{say("photo.placing")}</p> : null}
      {told && "found" in told ? <Foretold placing={told.found} /> : null}
      {told && "fault" in told ? <FaultNote fault={told.fault} /> : null}
      <div className="row">
        <button
          type="button"
          className="go"
          disabled={!isPlaced || isBusy}
          onClick={() => toTable()}
        >
          {say("photo.lay")}
        </button>
      </div>
    </div>
  );
}
