import type { PrintedPhoto, ReportModel } from '../model.ts';
import { LINE_KEY } from '../wording.ts';
import { cut } from './cut.ts';
import { Typst } from './typst.ts';

const IMAGE_ENDINGS: Readonly<Record<string, string>> = {
  'image/png': 'png',
  'image/jpeg': 'jpg',
  'image/gif': 'gif',
  'image/webp': 'webp',
  'image/svg+xml': 'svg',
};

/**
 * Sets a report as a tagged PDF (PDF/UA-1). The same model gives the same bytes: the date comes
 * from the model, fonts from the repository.
 * @throws Error with the typesetter's words when a template is at fault.
 */
export async function renderPdf(model: ReportModel): Promise<Uint8Array> {
  const typst = new Typst();
  const photos = model.photos.map((photo, i) => ({
    caption: photo.caption,
    file: layPhoto(typst, photo, i),
  }));
  typst.layData('model.json', { ...cut(model), photos, lineKey: LINE_KEY });
  return typst.pdf('report.typ');
}

/** Name under which the template finds a photograph; empty when it is no picture that can be set. */
function layPhoto(typst: Typst, photo: PrintedPhoto, i: number): string {
  const ending = IMAGE_ENDINGS[photo.mediaType];
  if (ending === undefined) return '';
  const name = `photo-${i}.${ending}`;
  typst.lay(name, Buffer.from(photo.base64, 'base64'));
  return typst.canSet(`#image("${name}", alt: "trial")`) ? name : '';
}
