import type { WrittenInputs } from '../../../src/engine/index.ts';
import { QuestionForm } from '../answer/question-form.tsx';
import { useDesk } from '../app/desk-client.ts';
import { onlyWritten } from '../parts/only-written.ts';
import { Refusals } from '../parts/refusals.tsx';
import { type Piece, PieceShown } from './piece-shown.tsx';

export interface AskedOfValuesProps {
  readonly question: string;
  readonly shows: readonly Piece[];
  readonly written: WrittenInputs;
  readonly onChange: (written: WrittenInputs) => void;
}

/** A question asked of what is typed here, answered as it is typed. */
export function AskedOfValues(props: AskedOfValuesProps) {
  const { question, shows, written, onChange } = props;
  const questions = useDesk(['questions'], (desk) => desk.questions());
  const own = questions.data?.find((q) => q.id === question);
  const given = onlyWritten(written);
  const isGiven = Object.keys(given).length > 0;
  const { data, error } = useDesk(
    ['values', question, given],
    (d) => d.answerValues(question, given),
    isGiven,
  );
  if (!own) return null;
  return (
    <div className="asked">
      <QuestionForm
        question={own}
        written={written}
        onChange={onChange}
        ifEmpty="Write numbers as you say them: 640 ± 2 g. What is left empty is missing."
      />
      <Refusals error={error} />
      {isGiven &&
        data &&
        shows.map((piece) => <PieceShown key={piece} piece={piece} sheet={data} />)}
    </div>
  );
}
