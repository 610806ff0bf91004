import { Link } from '@tanstack/react-router';
import { useState } from 'react';
import { useDesk } from '../app/desk-client.ts';
import { useSelection } from '../app/selection.tsx';
import { useHeader } from '../app/study-header.ts';
import { MarkKey } from '../map/cg-marks.tsx';
import { type LabelChoice, LabelPicker, labelledBodies } from '../map/label-choice.tsx';
import { MapSheet } from '../map/map-sheet.tsx';
import { useMarks } from '../map/use-marks.ts';
import { canBeDrawn } from '../map/views.ts';
import { InHand } from '../parts/in-hand.tsx';
import { LineKey } from '../parts/line-key.tsx';
import { OverviewClaims } from './overview-claims.tsx';
import { OverviewGaps } from './overview-gaps.tsx';
import { OverviewNext } from './overview-next.tsx';
import { OverviewTiles } from './overview-tiles.tsx';

const ROWS = [['plan'], ['side']] as const;

/** The study at a glance: sums that close or not, the drawn vehicle, what is open. */
export function OverviewPage() {
  const { parts, title } = useHeader();
  if (parts === 0) return <EmptyStudy />;
  return (
    <div className="overview">
      <h1 className="heard">Overview of {title}</h1>
      <div className="overview-main">
        <OverviewTiles />
        <OverviewMap />
      </div>
      <aside className="overview-aside">
        <InHand />
        <OverviewNext />
        <OverviewGaps />
        <OverviewClaims />
        <LineKey />
      </aside>
    </div>
  );
}

function OverviewMap() {
  const map = useDesk(['map'], (desk) => desk.map());
  const marks = useMarks();
  const { selected } = useSelection();
  const [labels, setLabels] = useState<LabelChoice>('none');
  if (!map.data) return null;
  return (
    <section className="overview-map" aria-label="Drawn map">
      <MapSheet
        model={map.data}
        marks={marks}
        rows={ROWS}
        labelled={labelledBodies(map.data, labels, selected)}
      />
      {canBeDrawn(map.data) && (
        <div className="map-corner">
          <MarkKey marks={marks} />
          <LabelPicker value={labels} onChange={setLabels} />
        </div>
      )}
    </section>
  );
}

function EmptyStudy() {
  const { study, title } = useHeader();
  return (
    <div className="page">
      <h1>{title}</h1>
      <p>There are no parts in this study yet.</p>
      <p>
        <Link to="/s/$study/import" params={{ study }}>
          Import the tables of a record
        </Link>
      </p>
    </div>
  );
}
