import { useEffect } from "react";
import { OwnPage } from "../ownBlock/OwnShell.tsx";
import { own } from "../ownBlock/state.ts";
import { BusyNote } from "./BusyNote.tsx";
import { begin } from "./begin.ts";
import { takeUp, useEye } from "./eye.ts";
import { EyeFault } from "./FaultNote.tsx";
import { LayingPicture } from "./LayingPicture.tsx";
import { LensClause, WavesClause } from "./LensClause.tsx";
import { MarkClauses } from "./MarkClauses.tsx";
import { MarksBoard } from "./MarksBoard.tsx";
import { PictureClause } from "./PictureClause.tsx";
import { PiecePick, StagePick } from "./PiecePick.tsx";
import { Foretold, PlacedClause } from "./PlacedClause.tsx";
import { stopPictures } from "./photoClient.ts";
import { usePhotoSay } from "./photoSay.ts";
import { takePicture } from "./picking.ts";
import { dropUnused } from "./pictureFiles.ts";
import { usePiece } from "./piece.ts";
import { usePlacing } from "./placing.ts";
import { TraceBoard } from "./TraceBoard.tsx";
import "../styles/photo.css";
import { TraceClauses } from "./TraceClauses.tsx";

/** A picture dropped anywhere on the page is taken; other files go the way of all files. */
const useDropped = (): void => {
  useEffect(() => {
    const onDrop = (event: DragEvent): void => {
      const file = event.dataTransfer?.files[0];
      if (!file?.type.startsWith("image/")) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      // What says "drop here" over the page does not see this drop: it is told that the file has left.
      dispatchEvent(new DragEvent("dragleave"));
      begin(takePicture(file, false));
    };
    addEventListener("drop", onDrop, { capture: true });
    return () => removeEventListener("drop", onDrop, { capture: true });
  }, []);
};

function Keys() {
  const say = usePhotoSay();
  return (
    <details className="fold">
      <summary>{say("photo.keys")}</summary>
      {(["cross", "marks", "points", "kinds", "handles", "table"] as const).map((key) => (
        <p key={key}>{say(`photo.keys.${key}`)}</p>
      ))}
    </details>
  );
}

function MarkTool() {
  const say = usePhotoSay();
  const tool = useEye((s) => s.tool);
  const { by } = usePiece();
  const name = by === "scale" ? "length" : "mark";
  if (tool === name) return null;
  return (
    <p className="note links">
      <button type="button" className="plainLink" onClick={() => takeUp(name)}>
        {say(`photo.tool.${name}`)}
      </button>
    </p>
  );
}

function PictureStage() {
  const { photos } = usePiece();
  const { lack, told } = usePlacing();
  return (
    <>
      <StagePick canTrace={told !== null && "found" in told} />
      <EyeFault />
      <BusyNote />
      <PictureClause />
      {photos.length === 0 ? null : (
        <div className="clauses">
          <MarkClauses />
          <LensClause />
          <WavesClause />
          <PlacedClause lack={lack} told={told} />
        </div>
      )}
      {photos.length === 0 ? null : <MarkTool />}
    </>
  );
}

function TraceStage() {
  const { told } = usePlacing();
  return (
    <>
      <StagePick canTrace={told !== null && "found" in told} />
      <EyeFault />
      <BusyNote />
      {told && "found" in told ? <Foretold placing={told.found} isShort /> : null}
      <TraceClauses />
    </>
  );
}

/** From pictures of the paper pieces to their outlines. */
export function PhotoWay() {
  const hasPicture = usePiece().photos.length > 0;
  const stage = useEye((s) => s.stage);
  const isTrace = stage === "trace" && hasPicture;
  useDropped();
  useEffect(() => {
    begin(dropUnused(own().photo));
    return stopPictures;
  }, []);
  return (
    <>
      <OwnPage step="pieces">
        <div className="photoWay tight">
          <PiecePick />
          {isTrace ? <TraceStage /> : <PictureStage />}
          <Keys />
        </div>
      </OwnPage>
      {isTrace ? <TraceBoard /> : hasPicture ? <MarksBoard /> : <LayingPicture />}
    </>
  );
}
