import { NEW_WORK } from "../../project/work.ts";
import { choirWork } from "../data/choir.ts";
import { openBringing } from "../ownBlock/bringing.ts";
import { Disc } from "../page/ButtonArt.tsx";
import { change } from "../state/changes.ts";
import { goTo } from "../state/going.ts";
import { put, useStudio } from "../state/store.ts";
import { useSay } from "../words/say.ts";
import { BlockPicture, ChoirPicture, MeasuresPicture } from "./DoorPictures.tsx";
import { OpenFile } from "./OpenFile.tsx";
import { LooksSentence } from "./ViewWords.tsx";

const RIB = Array.from({ length: 33 }, (_, i) => `M${4 + i * 12} 14V150M${9 + i * 12} 14V150`).join(
  "",
);
const STITCHES = Array.from({ length: 33 }, (_, i) => `M${2 + i * 12} 7h7`).join("");

function Cover() {
  const say = useSay();
  return (
    <header className="cover cloth" data-region>
      <h1>Ribwright</h1>
      <p>{say("brand.tagline")}</p>
      <div className="bands" />
      <p className="small">{say("brand.does")}</p>
      <p className="small">{say("brand.private")}</p>
      <svg viewBox="0 0 392 150" preserveAspectRatio="xMinYMin slice" aria-hidden="true">
        <path d={RIB} stroke="var(--foil)" opacity=".34" />
        <path d={STITCHES} stroke="var(--foil)" strokeWidth="1.6" />
        <path d="M0 14H392" stroke="var(--foil)" strokeWidth="1.5" opacity=".8" />
      </svg>
    </header>
  );
}

/** A fresh work, unless nothing was begun yet; the old one is an undo away. */
const begin = (name: string): void => {
  change(NEW_WORK, () => name);
  goTo("measures");
};

const openChoir = (name: string): void => {
  change(choirWork(), () => name);
  goTo("alterations");
};

function MeasuresDoor() {
  const say = useSay();
  return (
    <div className="door">
      <div className="pic">
        <MeasuresPicture />
      </div>
      <Knob />
      <div className="txt">
        <h3>{say("door.measures")}</h3>
        <p>{say("door.measures.text")}</p>
        <p className="need">{say("door.measures.need")}</p>
        <button type="button" className="go" onClick={() => begin(say("step.start"))}>
          {say("door.measures.go")}
        </button>
      </div>
    </div>
  );
}

function BlockDoor() {
  const say = useSay();
  return (
    <div className="door">
      <div className="pic">
        <BlockPicture />
      </div>
      <Knob />
      <div className="txt">
        <h3>{say("door.block")}</h3>
        <p>{say("door.block.text")}</p>
        <p className="need">{say("door.block.need")}</p>
        <button type="button" className="go quiet" onClick={openBringing}>
          {say("door.block.go")}
        </button>
      </div>
    </div>
  );
}

function ChoirDoor() {
  const say = useSay();
  return (
    <div className="door">
      <div className="pic">
        <ChoirPicture />
      </div>
      <Knob />
      <div className="txt">
        <h3>{say("door.choir")}</h3>
        <p>{say("door.choir.text")}</p>
        <p className="need">{say("door.choir.need")}</p>
        <button type="button" className="go quiet" onClick={() => openChoir(say("step.choir"))}>
          {say("door.choir.go")}
        </button>
      </div>
    </div>
  );
}

function Knob() {
  return (
    <svg className="knob" width="30" height="30" viewBox="-15 -15 30 30" aria-hidden="true">
      <g className="buttonArt" transform="scale(1.6)">
        <Disc on={false} />
      </g>
    </svg>
  );
}

/** The first page: three doors on a skirting line. */
export function Doors() {
  const say = useSay();
  const begun = useStudio((s) => s.history.past.length > 0 || s.history.present !== NEW_WORK);
  return (
    <div className="doors">
      <Cover />
      <main className="entry" id="page" data-region>
        <h2>{say("door.title")}</h2>
        <p>{say("door.lead")}</p>
        <div className="three">
          <MeasuresDoor />
          <BlockDoor />
          <ChoirDoor />
        </div>
        <div className="floor">
          {begun ? (
            <button type="button" className="plainLink" onClick={() => put({ atDoors: false })}>
              {say("door.back")}
            </button>
          ) : null}
          <OpenFile className="plainLink" text={say("door.open")} />
          <span>{say("door.openNote")}</span>
          <LooksSentence />
        </div>
      </main>
    </div>
  );
}
