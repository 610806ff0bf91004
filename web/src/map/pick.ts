import type { Layout, PlacedView } from './layout.ts';

/** Nearest a touch may be to a part to mean it, CSS pixels. */
const REACH = 30;

/**
 * The body meant by a touch at x, y: the smallest that lies under it, or the next larger one
 * where that is in hand already; else the nearest within reach.
 */
export function pick(
  layout: Layout,
  x: number,
  y: number,
  selected: string | undefined,
): string | undefined {
  const placed = layout.views.find(
    ({ field: f }) => within(x, f.left, f.width) && within(y, f.top, f.height),
  );
  if (!placed) return undefined;
  const near = distances(placed, x, y);
  const under = near.filter((n) => n.gap === 0);
  const at = under.findIndex((n) => n.id === selected);
  if (under.length > 0) return under[(at + 1) % under.length]?.id;
  const nearest = near.reduce((a, b) => (b.gap < a.gap ? b : a), { id: '', gap: REACH });
  return nearest.id === '' ? undefined : nearest.id;
}

const within = (x: number, from: number, size: number): boolean => x >= from && x <= from + size;

/** Every body with its distance from the touch, the smallest bodies first. */
function distances({ view, k, x0, y0 }: PlacedView, x: number, y: number) {
  return [...view.boxes]
    .sort((a, b) => a.w * a.h - b.w * b.h)
    .map(({ body, u, v, w, h }) => {
      const dx = Math.max(x0 + k * u - x, x - (x0 + k * (u + w)), 0);
      const dy = Math.max(y0 + k * v - y, y - (y0 + k * (v + h)), 0);
      return { id: body.id, gap: Math.hypot(dx, dy) };
    });
}
