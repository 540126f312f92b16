import { Choice } from "../page/Choice.tsx";

type Props<Value extends string> = {
  readonly label: string;
  readonly value: Value;
  readonly options: readonly (readonly [value: Value, text: string])[];
  readonly choose: (value: Value) => void;
  readonly name: string;
};

/** A word of the door's sentences that opens a list in place. */
export function ChoiceSlot<Value extends string>(props: Props<Value>) {
  const { label, value, options, choose, name } = props;
  const list = options.map(([option, text]) => ({ value: option, text }));
  return <Choice id={name} label={label} value={value} options={list} onChoose={choose} />;
}
