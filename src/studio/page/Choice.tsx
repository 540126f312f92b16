type Props<Value extends string> = {
  readonly label: string;
  readonly value: Value;
  readonly options: readonly { readonly value: Value; readonly text: string }[];
  readonly onChoose: (value: Value) => void;
  readonly id: string;
};

/** A word in a sentence that opens a list in place; not one of the garment's choices. */
export function Choice<Value extends string>(props: Props<Value>) {
  const { label, value, options, onChoose, id } = props;
  const choose = (to: string): void => {
    const option = options.find((one) => one.value === to);
    if (option) onChoose(option.value);
  };
  return (
    <span className="w">
      <select
        aria-label={label}
        data-choice={id}
        value={value}
        onChange={(event) => choose(event.target.value)}
      >
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.text}
          </option>
        ))}
      </select>
    </span>
  );
}
