import type { ReactNode } from 'react';
import { DecisionShown } from '../answer/decision-shown.tsx';
import { shareText } from '../parts/number-text.ts';
import { OutNumber } from '../parts/out-number.tsx';
import { type OutFound, outOf, useAnswers, useOut } from '../parts/use-out.ts';
import { Whiskers } from '../parts/whiskers.tsx';

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
      <OutNumber found={parts} size="large" {...(scales ? { beside: [scales.out] } : {})} />
      {scales && <Compared parts={parts} scales={scales} />}
      {scales && (
        <p>
          scales <OutNumber found={scales} beside={[parts.out]} />
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
  if (!out.decision) return <p className="open">open: {out.missing.length} readings missing</p>;
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
  const scales = useOut(...s);
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
          <span className="open">not taken yet</span>
        )}
      </p>
    </Tile>
  );
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
          <b>not costed</b> {lacking} parts
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
