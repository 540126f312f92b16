import { Fragment } from "react";
import type { Garment } from "../../bands/garment.ts";
import { type StepId, stepsOf } from "../chapters/makingSteps.ts";
import { usePrint } from "../state/print.ts";
import { useSay } from "../words/say.ts";
import { Ground } from "./Ground.tsx";
import { type HalfShapes, halfShapes } from "./makingShapes.ts";
import { Scroller } from "./Scroller.tsx";
import type { Size } from "./view.ts";

type Props = { readonly garment: Garment; readonly size: Size };

/** What each step shows: which half, what is on already, and the seam in hand. */
type Scene = {
  readonly side: "front" | "back";
  readonly sleeves: boolean;
  readonly insert: boolean;
  readonly neckband: boolean;
  readonly cuffs: boolean;
  readonly hem: boolean;
  readonly sewing: readonly ("v" | "raglan" | "side" | "underarm" | "neck" | "wrist" | "hem")[];
};

const BARE: Scene = {
  side: "front",
  sleeves: false,
  insert: false,
  neckband: false,
  cuffs: false,
  hem: false,
  sewing: [],
};
const SEWN: Scene = { ...BARE, sleeves: true, insert: true };

const SCENES: Readonly<Record<StepId, Scene>> = {
  "1": { ...BARE, sewing: ["v"] },
  "2": { ...BARE, insert: true, sewing: ["v"] },
  "3": { ...SEWN, sewing: ["raglan"] },
  "4": { ...SEWN, side: "back", sewing: ["raglan"] },
  "5": { ...SEWN, sewing: ["side", "underarm"] },
  "6": { ...SEWN, neckband: true, sewing: ["neck"] },
  "7": { ...SEWN, neckband: true, cuffs: true, sewing: ["wrist"] },
  "8": { ...SEWN, neckband: true, cuffs: true, hem: true, sewing: ["hem"] },
};

type SceneProps = { readonly scene: Scene; readonly shapes: HalfShapes; readonly depth: number };

/** The folded neckband: a wide line under the pieces, so that only what stands free of them shows. */
function Neckband({ shapes, depth }: SceneProps) {
  return (
    <g strokeLinejoin="round">
      <path
        d={shapes.neckline}
        fill="none"
        stroke="var(--ink)"
        style={{ strokeWidth: depth * 2 + 5, vectorEffect: "none" }}
      />
      <path
        d={shapes.neckline}
        fill="none"
        stroke="var(--piece-held)"
        style={{ strokeWidth: depth * 2, vectorEffect: "none" }}
      />
      <g transform={shapes.lay}>
        <path
          d={shapes.sleeveNeck}
          fill="none"
          stroke="var(--ink)"
          style={{ strokeWidth: depth * 2 + 5, vectorEffect: "none" }}
        />
        <path
          d={shapes.sleeveNeck}
          fill="none"
          stroke="var(--piece-held)"
          style={{ strokeWidth: depth * 2, vectorEffect: "none" }}
        />
      </g>
    </g>
  );
}

/** Half of a scene; the other half is its mirror. */
function Half(props: SceneProps) {
  const { scene, shapes } = props;
  const sews = (seam: Scene["sewing"][number]) => scene.sewing.includes(seam);
  return (
    <>
      {scene.neckband ? <Neckband {...props} /> : null}
      {scene.sleeves ? (
        <g transform={shapes.lay}>
          {scene.cuffs ? <path className="mkRib" d={shapes.cuff} /> : null}
          <path className="mkFill" d={shapes.sleeve} />
          <path className="mkEdge" d={shapes.sleeveOutline} />
          <path className="mkEdge" d={shapes.sleeveNeck} />
          {sews("underarm") ? <path className="mkSeam" d={shapes.underarm} /> : null}
          {sews("wrist") ? (
            <path className="mkSeam" d={shapes.cuff.split("L").slice(0, 2).join("L")} />
          ) : null}
          {sews("neck") ? <path className="mkSeam" d={shapes.sleeveNeck} /> : null}
        </g>
      ) : null}
      <path className="mkFill" d={shapes.body} />
      <path className="mkEdge" d={shapes.outline} />
      {sews("raglan") ? <path className="mkSeam" d={shapes.raglan} /> : null}
      {sews("side") ? <path className="mkSeam" d={shapes.side} /> : null}
      {sews("neck") ? <path className="mkSeam" d={shapes.neckline} /> : null}
    </>
  );
}

/** One picture, drawn from the body's own pieces. */
function Picture(props: SceneProps) {
  const { scene, shapes } = props;
  const sews = (seam: Scene["sewing"][number]) => scene.sewing.includes(seam);
  return (
    <>
      {scene.hem ? <path className="mkRib" d={shapes.hemBand} /> : null}
      {[1, -1].map((way) => (
        <g key={way} transform={`scale(${way} 1)`}>
          <Half {...props} />
        </g>
      ))}
      {scene.insert && shapes.insert !== "" ? <path className="mkRib" d={shapes.insert} /> : null}
      {sews("v")
        ? [1, -1].map((way) => (
            <path key={way} className="mkSeam" transform={`scale(${way} 1)`} d={shapes.v} />
          ))
        : null}
      {sews("hem") ? (
        <path className="mkSeam" d={`M${-shapes.right} ${shapes.bottom}H${shapes.right}`} />
      ) : null}
    </>
  );
}

/** One picture a step, in the order of the page. */
export function MakingPictures({ garment, size }: Props) {
  const say = useSay();
  const { unit } = usePrint();
  const halves = { front: halfShapes(garment, "front"), back: halfShapes(garment, "back") };
  const steps = stepsOf(garment.choices.alterations.vInsert.on);
  const columns = size.width > 560 ? 2 : 1;
  const rows = Math.ceil(steps.length / columns);
  const tall = Math.max(150, (size.height - 20) / rows);
  const wide = size.width / columns;
  const depth = garment.bands.neckband.finishedDepth;
  return (
    <Scroller className="board scrolls" label={say("head.making")}>
      <svg
        className="draw"
        style={{ height: Math.max(size.height, tall * rows + 20), touchAction: "auto" }}
        aria-hidden="true"
      >
        <Ground scale={0.5} view={null} unit={unit} />
        {steps.map((step, i) => {
          const scene = SCENES[step];
          const shapes = halves[scene.side];
          const x = (i % columns) * wide;
          const y = Math.floor(i / columns) * tall + 14;
          const reach = scene.sleeves ? 660 : 330;
          const scale = Math.min((wide - 48) / (2 * reach), (tall - 58) / 640);
          return (
            <Fragment key={step}>
              <circle className="stepDot" cx={x + 48} cy={y + 20} r="13" />
              <text className="stepNo" textAnchor="middle" x={x + 48} y={y + 25}>
                {i + 1}
              </text>
              <text className="pieceName halo" x={x + 70} y={y + 26}>
                {say(`making.title.${step}`)}
              </text>
              {shapes ? (
                <g transform={`translate(${x + wide / 2} ${y + 46}) scale(${scale})`}>
                  <Picture scene={scene} shapes={shapes} depth={depth} />
                </g>
              ) : null}
            </Fragment>
          );
        })}
      </svg>
    </Scroller>
  );
}
