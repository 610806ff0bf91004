import { codeSvg, type LabelSheet } from '../bag-labels.ts';
import { footOf } from '../labels-svg.ts';
import { Typst } from './typst.ts';

/**
 * Sets a sheet of bag labels as a tagged PDF (PDF/UA-1), cut lines around each label.
 * @throws Error with the typesetter's words when a template is at fault.
 */
export async function renderLabels(sheet: LabelSheet): Promise<Uint8Array> {
  const typst = new Typst();
  for (const [i, label] of sheet.labels.entries())
    typst.lay(`code-${i}.svg`, Buffer.from(await codeSvg(label.code)));
  typst.layData('labels.json', { ...sheet, foot: footOf(sheet) });
  return typst.pdf('labels.typ');
}
