import { PREDICTOR } from "./data/predictor.ts";
import { groupOf } from "./foretelling.ts";
import { type Body, MEASURE_IDS, type MeasureId } from "./measures.ts";
import { knowing } from "./normal.ts";

/**
 * Half the drop in squared distance from the middle of the survey from which an exchange is
 * asked about. On the held-out bodies of the survey 1 finds 99 % of women's exchanges and asks
 * 0.25 % of honest ones, 3 finds 68 % of men's and asks 0.4 %. Where the sex is not given the
 * more careful one stands.
 */
const ASKED_FROM = { female: 1, male: 3, pooled: 3 } as const;

const PLACES = (["height", "chest", "waist", "hip"] as const).map((id: MeasureId) =>
  MEASURE_IDS.indexOf(id),
);

/** True where all four are given and the body lies nearer to the survey with waist and hip exchanged. */
export const fitsBetterSwapped = (body: Body): boolean => {
  const { height, chest, waist, hip } = body.measures;
  if (waist === undefined || hip === undefined) return false;
  const group = groupOf(body);
  const { mean, swept } = knowing(PREDICTOR[group], PLACES);
  const squaredDistance = (values: readonly number[]): number => {
    const off = values.map((value, i) => value - (mean[PLACES[i] ?? -1] ?? Number.NaN));
    // Swept on its places the covariance holds the inverse with its sign changed.
    return -off.reduce(
      (total, one, i) =>
        total +
        off.reduce(
          (row, other, j) =>
            row + one * other * (swept[PLACES[i] ?? -1]?.[PLACES[j] ?? -1] ?? Number.NaN),
          0,
        ),
      0,
    );
  };
  const drop =
    squaredDistance([height, chest, waist, hip]) - squaredDistance([height, chest, hip, waist]);
  return drop / 2 > ASKED_FROM[group];
};
