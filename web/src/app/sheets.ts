/** The sheets of a study, in the order of their numbers. */
export const SHEETS = [
  { to: '/s/$study', title: 'Overview', exact: true },
  { to: '/s/$study/walkaround', title: 'Walkaround', exact: false },
  { to: '/s/$study/hoist', title: 'On the hoist', exact: false },
  { to: '/s/$study/scale', title: 'At the scale', exact: false },
  { to: '/s/$study/parts', title: 'Parts', exact: false },
  { to: '/s/$study/map', title: 'Map', exact: false },
  { to: '/s/$study/mass', title: 'Mass', exact: false },
  { to: '/s/$study/joints', title: 'Joints', exact: false },
  { to: '/s/$study/floors', title: 'Floors', exact: false },
  { to: '/s/$study/dry', title: 'Keeping dry', exact: false },
  { to: '/s/$study/cost', title: 'Cost', exact: false },
  { to: '/s/$study/questions', title: 'Questions', exact: false },
  { to: '/s/$study/claims', title: 'Claims', exact: false },
  { to: '/s/$study/history', title: 'History', exact: false },
] as const;

/** Number of the sheet at an address, from 1; 0 where it is none of them. */
export const sheetNumber = (pathname: string): number => {
  const rest = pathname.replace(/^\/s\/[^/]+/, '').replace(/\/$/, '');
  return (
    SHEETS.findIndex(({ to, exact }) => {
      const own = to.replace('/s/$study', '');
      return exact ? rest === own : rest === own || rest.startsWith(`${own}/`);
    }) + 1
  );
};
