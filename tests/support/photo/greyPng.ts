import { crc32, deflateSync } from "node:zlib";
import type { Picture } from "../../../src/trace/photo/picture.ts";

const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);

const part = (type: string, data: Uint8Array): Buffer => {
  const body = Buffer.concat([Buffer.from(type, "latin1"), data]);
  const [length, check] = [Buffer.alloc(4), Buffer.alloc(4)];
  length.writeUInt32BE(data.length);
  check.writeUInt32BE(crc32(body));
  return Buffer.concat([length, body, check]);
};

/** A grey picture as the bytes of a PNG (ISO/IEC 15948: depth 8, kind 0, rows unfiltered). */
export const greyPng = ({ grey, width, height }: Picture): Buffer => {
  const head = Buffer.alloc(13);
  head.writeUInt32BE(width, 0);
  head.writeUInt32BE(height, 4);
  head[8] = 8;
  const rows = Buffer.alloc((width + 1) * height);
  for (let y = 0; y < height; y++) {
    rows.set(grey.subarray(y * width, (y + 1) * width), y * (width + 1) + 1);
  }
  return Buffer.concat([
    SIGNATURE,
    part("IHDR", head),
    part("IDAT", deflateSync(rows, { level: 1 })),
    part("IEND", Buffer.alloc(0)),
  ]);
};
