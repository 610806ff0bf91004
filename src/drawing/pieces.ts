import type { Ink, Picture, Spot } from './picture.ts';

/** A picture cut at its cuts into pieces not higher than a sheet, where its cuts allow. */
export function pieces(picture: Picture, highest: number): Picture[] {
  const ends = [...picture.cuts.filter((y) => y > 0 && y < picture.height), picture.height];
  const out: Picture[] = [];
  let top = 0;
  ends.forEach((end, i) => {
    const next = ends[i + 1];
    if (next === undefined || next - top > highest) {
      out.push(piece(picture, top, end));
      top = end;
    }
  });
  return out;
}

/** What of a picture lies between two heights, moved up. */
function piece({ width, inks }: Picture, top: number, bottom: number): Picture {
  const within = inks.filter((ink) => {
    const ys = spotsOf(ink).map(([, y]) => y);
    const half = ink.i === 'circle' ? ink.r : ink.i === 'words' ? 7 : 0;
    return Math.max(...ys) + half >= top && Math.min(...ys) - half <= bottom;
  });
  return { width, height: bottom - top, inks: within.map((ink) => moved(ink, -top)), cuts: [] };
}

const spotsOf = (ink: Ink): readonly Spot[] =>
  ink.i === 'line' ? ink.spots : ink.i === 'area' ? ink.rings.flat() : [ink.at];

function moved(ink: Ink, by: number): Ink {
  const move = ([x, y]: Spot): Spot => [x, y + by];
  if (ink.i === 'line') return { ...ink, spots: ink.spots.map(move) };
  if (ink.i === 'area') return { ...ink, rings: ink.rings.map((ring) => ring.map(move)) };
  return { ...ink, at: move(ink.at) };
}
