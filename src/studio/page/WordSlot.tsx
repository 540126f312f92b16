import { type Option, type WordFieldId, wordField } from "../fields/wordFields.ts";
import { change } from "../state/changes.ts";
import { usePrint } from "../state/print.ts";
import { useStudio, work } from "../state/store.ts";
import { useSame } from "../state/useSame.ts";
import { useSay } from "../words/say.ts";

function Options({ list, group }: { readonly list: readonly Option[]; readonly group: string }) {
  return list
    .filter((option) => (option.group ?? "") === group)
    .map(({ value, text }) => (
      <option key={value} value={value}>
        {text}
      </option>
    ));
}

/** A word in a sentence that opens a list in place. */
export function WordSlot({ id }: { readonly id: WordFieldId }) {
  const say = useSay();
  const print = usePrint();
  const { label, options, read, write } = wordField(id);
  const value = useStudio((s) => read(s.history.present));
  const list = useSame((s) => options({ say, print }, s.history.present));
  const groups = [...new Set(list.map(({ group }) => group ?? ""))];
  const choose = (value: string) => {
    const to = list.find((option) => option.value === value)?.text ?? value;
    change(write(work(), value), () =>
      id === "body.size"
        ? say("step.size", { size: to })
        : say("step.word", { what: say(label), to }),
    );
  };
  return (
    <span className="w">
      <select
        aria-label={say(label)}
        data-word={id}
        value={value}
        onChange={(event) => choose(event.target.value)}
      >
        {groups.map((group) =>
          group === "" ? (
            <Options key={group} list={list} group={group} />
          ) : (
            <optgroup key={group} label={group}>
              <Options list={list} group={group} />
            </optgroup>
          ),
        )}
      </select>
    </span>
  );
}
