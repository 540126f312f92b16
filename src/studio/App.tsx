import { Page } from "./page/Page.tsx";
import { Doors } from "./shell/Doors.tsx";
import { DropFile } from "./shell/DropFile.tsx";
import { Heads } from "./shell/Heads.tsx";
import { KeyList } from "./shell/KeyList.tsx";
import { Notices } from "./shell/Notices.tsx";
import { Settled } from "./shell/Settled.tsx";
import { Spine } from "./shell/Spine.tsx";
import { useStudio } from "./state/store.ts";
import { Table } from "./table/Table.tsx";
import { Tape } from "./tape/Tape.tsx";
import { useSay } from "./words/say.ts";

/** Spine, running heads, page, table, tape: in the order in which the focus goes. */
function Studio() {
  const say = useSay();
  const folded = useStudio((s) => s.pageFolded);
  return (
    <div className={`studio${folded ? " folded" : ""}`}>
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

export function App() {
  const atDoors = useStudio((s) => s.atDoors);
  return (
    <>
      {atDoors ? <Doors /> : <Studio />}
      <Notices />
      <Settled />
      <KeyList />
      <DropFile />
    </>
  );
}
