/** The parts of jsPDF that layers are written with; its types leave them out. */
export type LayerInternals = {
  readonly events: { readonly subscribe: (topic: string, then: () => void) => void };
  readonly write: (text: string) => void;
  readonly newObject: () => number;
};

/** A layer of a PDF that a reader can switch: "optional content" (ISO 32000-1, 8.11; from memory). */
type Layer = { readonly title: string; readonly on: boolean };

export type PdfLayers = {
  /** Adds a layer; gives the name by which page contents call it. */
  readonly add: (title: string, on: boolean) => string;
};

/** UTF-16 in hexadecimal digits, which every reader shows as it is, accents and all. */
const hexText = (text: string): string =>
  `<FEFF${Array.from({ length: text.length }, (_, i) =>
    text.charCodeAt(i).toString(16).toUpperCase().padStart(4, "0"),
  ).join("")}>`;

/**
 * Layers for a document under way. jsPDF knows none: their objects are written when it writes its
 * resources, their names into the resource dictionary behind the drawings' (whose own dictionary is
 * closed first), and their list into the catalogue. Without layers the file stays as it was.
 */
export const pdfLayers = ({ events, write, newObject }: LayerInternals): PdfLayers => {
  const layers: Layer[] = [];
  const objects: number[] = [];
  const refs = (wanted: (layer: Layer) => boolean): string =>
    objects
      .filter((_, i) => layers[i] !== undefined && wanted(layers[i]))
      .map((id) => `${id} 0 R`)
      .join(" ");
  events.subscribe("putResources", () => {
    objects.length = 0;
    for (const { title } of layers) {
      objects.push(newObject());
      write(`<< /Type /OCG /Name ${hexText(title)} >>`);
      write("endobj");
    }
  });
  events.subscribe("putXobjectDict", () => {
    if (layers.length === 0) return;
    write(">>\n/Properties <<");
    for (const [i, id] of objects.entries()) write(`/L${i + 1} ${id} 0 R`);
  });
  events.subscribe("putCatalog", () => {
    if (layers.length === 0) return;
    const all = refs(() => true);
    const off = refs(({ on }) => !on);
    write("/Version /1.5\n/PageMode /UseOC");
    write(
      `/OCProperties << /OCGs [${all}] /D << /Name (Layers) /BaseState /ON /ON [] /OFF [${off}] /Order [${all}] /ListMode /AllPages >> >>`,
    );
  });
  return {
    add: (title, on) => {
      layers.push({ title, on });
      return `L${layers.length}`;
    },
  };
};

/** `ops` that are seen only while their layer is switched on. */
export const inLayer = (layer: string, ops: string): string => `/OC /${layer} BDC\n${ops}\nEMC`;
