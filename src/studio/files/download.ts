/** How long the browser may take to begin a download before its address is given back, in ms. */
const KEPT_FOR = 10_000;

/** Hands a file to the maker as a download, which every browser has. */
export const download = (name: string, data: BlobPart, type: string): void => {
  const link = document.createElement("a");
  link.href = URL.createObjectURL(new Blob([data], { type }));
  link.download = name;
  link.click();
  setTimeout(() => URL.revokeObjectURL(link.href), KEPT_FOR);
};

/** A file's name from a title: letters and digits, the rest as hyphens. */
export const fileName = (title: string, ending: string): string => {
  const plain = title
    .normalize("NFKD")
    .replace(/\p{M}/gu, "")
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-+|-+$/gu, "")
    .toLowerCase();
  return `${plain === "" ? "ribwright" : plain}${ending}`;
};
