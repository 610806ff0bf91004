import type { Figure } from '../engine/index.ts';
import { barsPicture } from './bars.ts';
import { drawingPicture } from './drawing.ts';
import { graphPicture } from './graph.ts';
import { isolinesPicture } from './isolines.ts';
import type { Layout } from './layout.ts';
import { linePicture } from './line-plot.ts';
import type { Picture } from './picture.ts';

/** Lays any figure out on paper of a given width. */
export function layOut(f: Figure, layout: Layout): Picture {
  switch (f.f) {
    case 'drawing':
      return drawingPicture(f, layout);
    case 'bars':
      return barsPicture(f, layout);
    case 'graph':
      return graphPicture(f, layout);
    case 'isolines':
      return isolinesPicture(f, layout);
    case 'line':
      return linePicture(f, layout);
  }
}
