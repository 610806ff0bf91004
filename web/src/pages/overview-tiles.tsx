import type { ReactNode } from 'react';
import { propertyWords } from '../../../src/study/index.ts';
import { DecisionShown } from '../answer/decision-shown.tsx';
import { counted } from '../parts/counted.ts';
import { shareText } from '../parts/number-text.ts';
import { OutNumber } from '../parts/out-number.tsx';
import { type OutFound, outOf, useAnswers, useOut } from '../parts/use-out.ts';
import { Whiskers } from '../parts/whiskers.tsx';
import type { AnswerSheet } from '../worker/answer-sheet.ts';

/** The numbers that the study turns on, each with its spread and what it is held against. */
export const OverviewTiles = () => (
  <div className="tiles">
    <MassTile />
    <CentreTile
      title="Centre of gravity X, parts"
      scales={['cg-from-corners', 'x']}
      parts={['mass-roll-up', 'x']}
      scalesWords="corner scales"
    />
    <CentreTile
      title="Centre of gravity Z, parts"
      scales={['cg-height-axle-lift', 'height']}
      parts={['mass-roll-up', 'z']}
      scalesWords="axle lift"
    />
    <CostTile />
    <PackTile />
    <TimeTile />
  </div>
);

const Tile = ({ title, children }: { readonly title: string; readonly children: ReactNode }) => (
  <section className="tile">
    <h2>{title}</h2>
    {children}
  </section>
);

const NotYet = ({ what }: { readonly what: string }) => (
  <p className="open">
    <b>open</b> <small>{what}</small>
  </p>
);

const GAP_WORDS: Readonly<Record<string, string>> = {
  'not distinguishable': 'closes',
  indicated: 'a gap is indicated',
  different: 'does not close',
};

/** Parts as weighed against the scales: does the sum close? */
function MassTile() {
  const parts = useOut('mass-closure', 'parts');
  const scales = useOut('mass-closure', 'scales');
  const gap = useOut('mass-closure', 'gap');
  if (!parts)
    return (
      <Tile title="Parts as weighed">
        <NotYet what="no part is weighed yet" />
      </Tile>
    );
  return (
    <Tile title="Parts as weighed">
      <OutNumber found={parts} size="large" />
      {scales && <Compared parts={parts} scales={scales} />}
      {scales && (
        <p>
          scales <OutNumber found={scales} />
        </p>
      )}
      {gap && (
        <p>
          gap <OutNumber found={gap} />
        </p>
      )}
      {gap && <Closed gap={gap} />}
    </Tile>
  );
}

function Closed({ gap: { out } }: { readonly gap: OutFound }) {
  if (!out.decision) return <p className="open">open: {lacksOf(out)}</p>;
  const { word } = out.decision;
  return (
    <DecisionShown
      decision={out.decision}
      kind={out.kind}
      unit={out.unit}
      says={GAP_WORDS[word]}
      isOpen={word !== 'not distinguishable'}
    />
  );
}

/** "2 readings missing"; where all are there, what keeps the word open is a spread. */
const lacksOf = ({ missing, unknownSpread }: OutFound['out']): string =>
  missing.length > 0
    ? `${counted(missing.length, 'reading')} missing`
    : `${counted(unknownSpread.length, 'spread')} not known`;

const Compared = ({ parts, scales }: { readonly parts: OutFound; readonly scales: OutFound }) => (
  <Whiskers
    rows={[
      { name: 'parts', shown: parts.out },
      { name: 'scales', shown: scales.out },
    ]}
  />
);

interface CentreTileProps {
  readonly title: string;
  readonly scales: readonly [question: string, output: string];
  readonly parts: readonly [question: string, output: string];
  readonly scalesWords: string;
}

/** One coordinate of the centre of gravity, from parts and from scales, told apart. */
function CentreTile({ title, scales: s, parts: p, scalesWords }: CentreTileProps) {
  const answer = useAnswers(s[0]).data?.[0];
  const scales = outOf(answer, s[1]);
  const parts = useOut(...p);
  return (
    <Tile title={title}>
      {parts ? (
        <OutNumber found={parts} size="large" {...(scales ? { beside: [scales.out] } : {})} />
      ) : (
        <NotYet what="no part has mass and place" />
      )}
      {parts && scales && <Compared parts={parts} scales={scales} />}
      <p>
        {scalesWords}{' '}
        {scales ? (
          <OutNumber found={scales} {...(parts ? { beside: [parts.out] } : {})} />
        ) : (
          <span className="open">{whyOpen(answer)}</span>
        )}
      </p>
    </Tile>
  );
}

/** Readings without which a coordinate by the scales is open, at most, before it is not begun. */
const FEW = 3;

/** What keeps the scales from saying: readings not begun, or the few that are still wanted. */
function whyOpen(answer: AnswerSheet | undefined): string {
  const absent = [...new Set(answer?.absent.map((c) => propertyWords(c.property)))];
  return absent.length === 0 || absent.length > FEW
    ? 'not taken yet'
    : `open: no ${absent.join(', no ')}`;
}

/** Cost of what is costed; the share that rests on assumptions, and what has no model. */
function CostTile() {
  const { data } = useAnswers('part-cost');
  const cost = outOf(data?.[0], 'cost');
  const assumed = outOf(data?.[0], 'assumedShare');
  const costed = outOf(data?.[0], 'costedShare');
  const lacking = data?.[0]?.findings.filter((f) => f.code === 'not-costed').length ?? 0;
  if (!cost)
    return (
      <Tile title="Should-cost">
        <NotYet what="no rate book prices a part" />
      </Tile>
    );
  return (
    <Tile title="Should-cost">
      <OutNumber found={cost} size="large" />
      {assumed && <p>{shareText(assumed.out.x)} of it on assumed rates</p>}
      {costed && <p>{shareText(costed.out.x)} of the mass costed</p>}
      {lacking > 0 && (
        <p className="open">
          <b>not costed</b> {counted(lacking, 'part')}
        </p>
      )}
    </Tile>
  );
}

function PackTile() {
  const { data } = useAnswers('pack-energy-density');
  const mass = outOf(data?.[0], 'specific');
  const volume = outOf(data?.[0], 'volumetric');
  if (!mass)
    return (
      <Tile title="Pack energy">
        <NotYet what="no pack with an energy" />
      </Tile>
    );
  return (
    <Tile title="Pack energy">
      <OutNumber found={mass} size="large" />
      {volume && (
        <p>
          <OutNumber found={volume} />
        </p>
      )}
      <p className="soft">{mass.sheet.basis.subject}</p>
    </Tile>
  );
}

function TimeTile() {
  const time = useOut('install-time', 'time');
  const each = useOut('install-time', 'each');
  const joints = useOut('joint-census', 'groups');
  const elements = useOut('joint-census', 'elements');
  if (!time)
    return (
      <Tile title="Install time">
        <NotYet what="no joint has its times" />
      </Tile>
    );
  return (
    <Tile title="Install time, joints">
      <OutNumber found={time} size="large" />
      {joints && elements && (
        <p>
          <OutNumber found={joints} /> groups, <OutNumber found={elements} /> elements
        </p>
      )}
      {each && (
        <p>
          <OutNumber found={each} /> each
        </p>
      )}
    </Tile>
  );
}
