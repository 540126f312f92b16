import { useTaughtWork, useTeaching } from "./classroom/teaching.ts";
import { Late, late } from "./guide/Late.tsx";
import { useBringing } from "./ownBlock/bringing.ts";
import { Page } from "./page/Page.tsx";
import { Doors } from "./shell/Doors.tsx";
import { DropFile } from "./shell/DropFile.tsx";
import { Heads } from "./shell/Heads.tsx";
import { KeyList } from "./shell/KeyList.tsx";
import { Notices } from "./shell/Notices.tsx";
import { SetScreen } from "./shell/SetScreen.tsx";
import { Settled } from "./shell/Settled.tsx";
import { Spine } from "./shell/Spine.tsx";
import { drawnOf } from "./state/made.ts";
import { useStudio } from "./state/store.ts";
import { Table } from "./table/Table.tsx";
import { Tape } from "./tape/Tape.tsx";
import { useSay } from "./words/say.ts";

const ClassRoom = late(() =>
  import("./classroom/ClassRoom.tsx").then(({ ClassRoom: room }) => ({ default: room })),
);

const OwnBlock = late(() =>
  Promise.all([import("./ownBlock/OwnBlock.tsx"), import("./ownBlock/ownKeeping.ts")]).then(
    async ([{ OwnBlock: block }, { ownKept }]) => {
      await ownKept();
      return { default: block };
    },
  ),
);

/** Spine, running heads, page, table, tape: in the order in which the focus goes. */
function Studio() {
  const say = useSay();
  const folded = useStudio((s) => s.pageFolded);
  const making = useStudio((s) => s.chapter === "making");
  return (
    <div className={`studio${folded ? " folded" : ""}${making ? " making" : ""}`}>
      <a className="skip" href="#page">
        {say("skip.page")}
      </a>
      <Spine />
      <Heads />
      <Page />
      <Table />
      <Tape />
    </div>
  );
}

/** The class stands in place of the studio while it is shown; the work waits as it was. */
function InClass() {
  const { made } = drawnOf(useTaughtWork());
  return <Late>{made ? <ClassRoom garment={made.garment} /> : null}</Late>;
}

/** What stands before the maker: the door of an own block, the three doors, the class, the studio. */
function Room() {
  const bringing = useBringing(({ open }) => open);
  const atDoors = useStudio((s) => s.atDoors);
  const teaching = useTeaching(({ open }) => open);
  if (bringing) {
    return (
      <Late>
        <OwnBlock />
      </Late>
    );
  }
  if (atDoors) return <Doors />;
  return teaching ? <InClass /> : <Studio />;
}

export function App() {
  return (
    <>
      <Room />
      <Notices />
      <Settled />
      <KeyList />
      <SetScreen />
      <DropFile />
    </>
  );
}
