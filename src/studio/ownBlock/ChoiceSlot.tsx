type Props<Value extends string> = {
  readonly label: string;
  readonly value: Value;
  readonly options: readonly (readonly [value: Value, text: string])[];
  readonly choose: (value: Value) => void;
  readonly name?: string;
};

/** A word of the door's sentences that opens a list in place. */
export function ChoiceSlot<Value extends string>(props: Props<Value>) {
  const { label, value, options, choose, name } = props;
  return (
    <span className="w">
      <select
        aria-label={label}
        data-choice={name}
        value={value}
        onChange={(event) => {
          const chosen = options.find(([option]) => option === event.target.value);
          if (chosen) choose(chosen[0]);
        }}
      >
        {options.map(([option, text]) => (
          <option key={option} value={option}>
            {text}
          </option>
        ))}
      </select>
    </span>
  );
}
