/** Letters that are no plain letter with an accent, and signs, as they are written without them. */
const PLAIN: Readonly<Record<string, string>> = {
  Æ: "AE",
  æ: "ae",
  Œ: "OE",
  œ: "oe",
  Ø: "O",
  ø: "o",
  Đ: "D",
  đ: "d",
  Ð: "D",
  ð: "d",
  Þ: "Th",
  þ: "th",
  Ł: "L",
  ł: "l",
  ß: "ss",
  ẞ: "SS",
  ı: "i",
  "×": "x",
  "–": "-",
  "—": "-",
  "’": "'",
  "‘": "'",
  "“": '"',
  "”": '"',
  "½": "1/2",
  "¼": "1/4",
  "¾": "3/4",
};

/** A text in ASCII alone, on one line, for files that carry no other letters; "?" for the rest. */
export const asciiOf = (text: string): string =>
  [...text.normalize("NFD").replace(/\p{M}/gu, "")]
    .map((letter) => {
      if (/[ -~]/.test(letter)) return letter;
      return /\s/u.test(letter) ? " " : (PLAIN[letter] ?? "?");
    })
    .join("");
