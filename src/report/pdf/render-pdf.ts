import { fileURLToPath } from 'node:url';
import { NodeCompiler, type NodeError } from '@myriaddreamin/typst-ts-node-compiler';
import type { PrintedPhoto, ReportModel } from '../model.ts';
import { LINE_KEY } from '../wording.ts';
import { cut } from './cut.ts';
import { coverageOf, fontFiles } from './fonts.ts';
import { printableData } from './printable.ts';

/** Folder of the templates; data and pictures are laid over it in memory, never written. */
const TEMPLATES = fileURLToPath(new URL('.', import.meta.url));
/** PDF/UA-1 (ISO 14289-1) refuses a drawing without a text alternative and a letter without a glyph. */
const STANDARD = 'ua-1';

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
  const fonts = fontFiles();
  const compiler = NodeCompiler.create({ workspace: TEMPLATES, fontArgs: [{ fontBlobs: fonts }] });
  const photos = model.photos.map((photo, i) => ({
    caption: photo.caption,
    file: layPhoto(compiler, photo, i),
  }));
  const data = printableData({ ...cut(model), photos, lineKey: LINE_KEY }, coverageOf(fonts));
  lay(compiler, 'model.json', Buffer.from(JSON.stringify(data)));
  return compiled(compiler, 'report.typ');
}

const lay = (compiler: NodeCompiler, name: string, bytes: Buffer): void =>
  compiler.mapShadow(`${TEMPLATES}${name}`, bytes);

/** Name under which the template finds a photograph; empty when it is no picture that can be set. */
function layPhoto(compiler: NodeCompiler, photo: PrintedPhoto, i: number): string {
  const ending = IMAGE_ENDINGS[photo.mediaType];
  if (ending === undefined) return '';
  const name = `photo-${i}.${ending}`;
  lay(compiler, name, Buffer.from(photo.base64, 'base64'));
  const trial = compiler.compile({ mainFileContent: `#image("${name}", alt: "trial")` });
  return trial.hasError() ? '' : name;
}

function compiled(compiler: NodeCompiler, main: string): Uint8Array {
  const run = compiler.compile({ mainFilePath: `${TEMPLATES}${main}` });
  const document = run.result;
  if (!document) throw new Error(`report could not be set: ${wordsOf(compiler, run.takeError())}`);
  return compiler.pdf(document, { pdfStandard: STANDARD });
}

function wordsOf(compiler: NodeCompiler, error: NodeError | null): string {
  if (!error) return 'no reason given';
  return compiler
    .fetchDiagnostics(error)
    .map((d: { message: string; path: string }) => `${d.path}: ${d.message}`)
    .join('; ');
}
