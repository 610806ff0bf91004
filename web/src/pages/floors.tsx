import { useState } from 'react';
import type { WrittenInputs } from '../../../src/engine/index.ts';
import { AnswerPage, PageSection } from '../answer-page/answer-page.tsx';
import { AskedOfValues } from '../answer-page/asked-of-values.tsx';
import { useDesk } from '../app/desk-client.ts';

const QUESTION = 'floor-options';

/** A floor or cover plate as built beside other designs, with all that each needs beside it. */
export function FloorsPage() {
  const { data } = useDesk(['questions'], (desk) => desk.questions());
  const example = data?.find((q) => q.id === QUESTION)?.example;
  const [written, setWritten] = useState<WrittenInputs>({});
  return (
    <AnswerPage title="Floors">
      <PageSection title="Floor or cover plate: as built, and other designs" wide>
        <p className="acts">
          <button type="button" onClick={() => example && setWritten(example)}>
            Fill the invented example
          </button>
          <button type="button" onClick={() => setWritten({})}>
            Empty all
          </button>
        </p>
        <AskedOfValues
          question={QUESTION}
          written={written}
          onChange={setWritten}
          shows={['results', 'figures', 'table', 'findings']}
        />
      </PageSection>
    </AnswerPage>
  );
}
