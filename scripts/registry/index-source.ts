import type { QuestionFile } from './find-questions.ts';

/** Source of src/engine/registry.generated.ts: heads as literals, bodies loaded when asked for. */
export function indexSource(files: readonly QuestionFile[]): string {
  return `// Made from the question files by scripts/registry.ts: run \`npm run registry\`, do not edit.
import type { QuestionHead } from './registry.ts';

export const QUESTION_INDEX: readonly QuestionHead[] = [
${files.map(head).join('')}];
`;
}

function head({ file, question: q }: QuestionFile): string {
  const from = file.replace('src/engine/', './');
  const section = `{ id: ${text(q.section.id)}, title: ${text(q.section.title)}, order: ${q.section.order} }`;
  return `  {
    id: ${text(q.id)},
    title: ${text(q.title)},
    wording: ${text(q.wording)},
    subject: ${text(q.subject)},
    section: ${section},
    load: () => import(${text(from)}),
  },
`;
}

/** A single-quoted literal of any text. */
function text(words: string): string {
  const inner = JSON.stringify(words).slice(1, -1).replaceAll('\\"', '"').replaceAll("'", "\\'");
  return `'${inner}'`;
}
