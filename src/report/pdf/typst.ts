import { fileURLToPath } from 'node:url';
import { NodeCompiler, type NodeError } from '@myriaddreamin/typst-ts-node-compiler';
import { coverageOf, fontFiles } from './fonts.ts';
import { printableData } from './printable.ts';

/** Folder of the templates; data and pictures are laid over it in memory, never written. */
const TEMPLATES = fileURLToPath(new URL('.', import.meta.url));
/** PDF/UA-1 (ISO 14289-1) refuses a drawing without a text alternative and a letter without a glyph. */
const STANDARD = 'ua-1';

/** One run of the typesetter over the templates of this folder, with the report's own fonts. */
export class Typst {
  readonly #fonts = fontFiles();
  readonly #compiler = NodeCompiler.create({
    workspace: TEMPLATES,
    fontArgs: [{ fontBlobs: this.#fonts }],
  });

  /** Puts bytes where the template finds them under this name. */
  lay(name: string, bytes: Buffer): void {
    this.#compiler.mapShadow(`${TEMPLATES}${name}`, bytes);
  }

  /** Puts data where the template finds them, texts as the fonts can set them. */
  layData(name: string, data: unknown): void {
    const printable = printableData(data, coverageOf(this.#fonts));
    this.lay(name, Buffer.from(JSON.stringify(printable)));
  }

  /** Whether a piece of markup can be set. */
  canSet(markup: string): boolean {
    return !this.#compiler.compile({ mainFileContent: markup }).hasError();
  }

  /** A tagged PDF of a template. @throws Error with the typesetter's words when it is at fault. */
  pdf(template: string): Uint8Array {
    const run = this.#compiler.compile({ mainFilePath: `${TEMPLATES}${template}` });
    const document = run.result;
    if (!document) throw new Error(`${template} could not be set: ${this.#words(run.takeError())}`);
    return this.#compiler.pdf(document, { pdfStandard: STANDARD });
  }

  #words(error: NodeError | null): string {
    if (!error) return 'no reason given';
    return this.#compiler
      .fetchDiagnostics(error)
      .map((d: { message: string; path: string }) => `${d.path}: ${d.message}`)
      .join('; ');
  }
}
