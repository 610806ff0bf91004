import { useState } from 'react';
import { FigureShown } from '../figure/figure-shown.tsx';
import { FindingsList } from '../parts/findings-list.tsx';
import { revisionNumber } from '../parts/revision-text.ts';
import type { AnswerSheet } from '../worker/answer-sheet.ts';
import { onceNamed } from '../worker/node-words.ts';
import { Cautions } from './cautions.tsx';
import { Contributions } from './contributions.tsx';
import { DetailTable } from './detail-table.tsx';
import { GroupsTable } from './groups-table.tsx';
import { OutsTable } from './outs-table.tsx';
import { SamplingShown, type StartSampling } from './sampling-shown.tsx';
import { Working } from './working.tsx';

export interface AnswerCardProps {
  readonly sheet: AnswerSheet;
  /** Samples the same answer. */
  readonly sample: StartSampling;
}

/** An answer as it may be defended: results, spread, working, findings, sources, what it rests on. */
export function AnswerCard({ sheet, sample }: AnswerCardProps) {
  const [shown, setShown] = useState<string>();
  const out = sheet.outs.find((o) => o.name === shown) ?? sheet.outs.find((o) => !o.step);
  return (
    <article className="answer" aria-label={`Answer: ${sheet.title}`}>
      <h2>{sheet.title}</h2>
      <BasisLine sheet={sheet} />
      <OutsTable sheet={sheet} shown={out?.name} onShow={setShown} />
      <Cautions cautions={sheet.cautions} />
      {sheet.figures?.map((figure) => (
        <FigureShown key={figure.title} figure={figure} />
      ))}
      {out?.doubts.map((doubt) => (
        <p key={doubt}>
          <b>doubt</b> about the spread of {out.meaning}: {doubt}
        </p>
      ))}
      {out && <Contributions out={out} />}
      <SamplingShown
        key={sheet.key}
        start={sample}
        isInDoubt={sheet.outs.some((o) => o.doubts.length > 0)}
      />
      {sheet.findings.length > 0 && <h3>Findings</h3>}
      <FindingsList findings={sheet.findings} />
      <GroupsTable sheet={sheet} />
      {sheet.detail && <DetailTable detail={sheet.detail} />}
      {sheet.further?.map((detail) => (
        <DetailTable key={detail.title} detail={detail} />
      ))}
      <details open>
        <summary>Working</summary>
        <Working sheet={sheet} />
      </details>
      <Method sheet={sheet} />
    </article>
  );
}

function BasisLine({ sheet: { basis, question, version } }: { readonly sheet: AnswerSheet }) {
  const parts = [
    basis.subject && `of ${onceNamed(basis.subject)}`,
    basis.conditions.length > 0 && `condition ${basis.conditions.join(', ')}`,
    basis.rates && `rates ${basis.rates}`,
    basis.currency && `currency ${basis.currency}`,
    basis.revision && `revision ${revisionNumber(basis.revision)}`,
    basis.invented && 'invented data',
    `${question}, version ${version}`,
  ].filter((part) => part);
  return <p className="soft basis">{parts.join(' · ')}</p>;
}

const Method = ({ sheet }: { readonly sheet: AnswerSheet }) => (
  <>
    <h3>Assumptions</h3>
    <ul>
      {sheet.assumptions.map((a) => (
        <li key={a}>{a}</li>
      ))}
    </ul>
    <h3>Sources</h3>
    <ul>
      {sheet.sources.map((s) => (
        <li key={`${s.title} ${s.at ?? ''}`}>
          {s.title}
          {s.at ? `, ${s.at}` : ''} <small>({s.status})</small>
        </li>
      ))}
    </ul>
  </>
);
