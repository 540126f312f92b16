import { change } from "../state/changes.ts";
import { useStudio, work } from "../state/store.ts";
import { useSay } from "../words/say.ts";

/** The date that is printed on the sheets; none unless the maker wants one. */
export function DateSlot() {
  const say = useSay();
  const date = useStudio((s) => s.history.present.date);
  const set = (to: string | null) =>
    change({ ...work(), date: to }, () =>
      say("step.word", { what: say("paper.date"), to: to ?? say("paper.noDate") }),
    );
  const today = () => new Date().toISOString().slice(0, 10);
  return (
    <>
      <span className="w">
        <select
          aria-label={say("paper.date")}
          value={date === null ? "none" : "dated"}
          onChange={(event) => set(event.target.value === "none" ? null : today())}
        >
          <option value="none">{say("paper.noDate")}</option>
          <option value="dated">{say("paper.dated", { date: "" }).trim()}</option>
        </select>
      </span>
      {date === null ? null : (
        <span className="n" style={{ marginLeft: 6 }}>
          <input
            type="date"
            aria-label={say("paper.date")}
            value={date}
            onChange={(event) => {
              if (event.target.value !== "") set(event.target.value);
            }}
          />
        </span>
      )}
    </>
  );
}
