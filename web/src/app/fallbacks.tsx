import { Link } from '@tanstack/react-router';
import { Refusals } from '../parts/refusals.tsx';

export const NoSuchPage = () => (
  <main className="sheet alone">
    <h1>There is no such page</h1>
    <p>
      <Link to="/">To the studies</Link>
    </p>
  </main>
);

/** A defect of ours: what is recorded is not touched by it. */
export const PageBroke = ({ error }: { readonly error: unknown }) => (
  <main className="sheet alone">
    <h1>This page broke</h1>
    <Refusals error={error} />
    <p>What was recorded is kept. Load the page again, or go back to the studies.</p>
    <p>
      <Link to="/">To the studies</Link>
    </p>
  </main>
);
