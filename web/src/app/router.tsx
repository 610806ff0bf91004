import {
  createRootRoute,
  createRoute,
  createRouter,
  lazyRouteComponent,
  Outlet,
  retainSearchParams,
} from '@tanstack/react-router';
import { NoSuchPage, PageBroke } from './fallbacks.tsx';
import { StudyShell } from './study-shell.tsx';

const root = createRootRoute({
  component: Outlet,
  notFoundComponent: NoSuchPage,
  errorComponent: PageBroke,
});

const studies = createRoute({
  getParentRoute: () => root,
  path: '/',
  component: lazyRouteComponent(() => import('../pages/studies.tsx'), 'StudiesPage'),
});

/** What every address of a study may carry: the part in hand. */
export interface StudySearch {
  readonly part?: string | undefined;
}

const study = createRoute({
  getParentRoute: () => root,
  path: '/s/$study',
  component: StudyShell,
  validateSearch: (search: Record<string, unknown>): StudySearch =>
    typeof search.part === 'string' ? { part: search.part } : {},
  search: { middlewares: [retainSearchParams(['part'])] },
});

const overview = createRoute({
  getParentRoute: () => study,
  path: '/',
  component: lazyRouteComponent(() => import('../pages/overview.tsx'), 'OverviewPage'),
});
const walkaround = createRoute({
  getParentRoute: () => study,
  path: '/walkaround',
  component: lazyRouteComponent(() => import('../pages/walkaround.tsx'), 'WalkaroundPage'),
});
const parts = createRoute({
  getParentRoute: () => study,
  path: '/parts',
  component: lazyRouteComponent(() => import('../pages/parts.tsx'), 'PartsPage'),
});
const map = createRoute({
  getParentRoute: () => study,
  path: '/map',
  component: lazyRouteComponent(() => import('../pages/map.tsx'), 'MapPage'),
});
const questions = createRoute({
  getParentRoute: () => study,
  path: '/questions',
  component: lazyRouteComponent(() => import('../pages/questions.tsx'), 'QuestionsPage'),
});
const question = createRoute({
  getParentRoute: () => study,
  path: '/questions/$question',
  component: lazyRouteComponent(() => import('../pages/question.tsx'), 'QuestionPage'),
  validateSearch: (search: Record<string, unknown>): { readonly of?: string | undefined } =>
    typeof search.of === 'string' ? { of: search.of } : {},
});
const hoist = createRoute({
  getParentRoute: () => study,
  path: '/hoist',
  component: lazyRouteComponent(() => import('../pages/hoist.tsx'), 'HoistPage'),
});
const scale = createRoute({
  getParentRoute: () => study,
  path: '/scale',
  component: lazyRouteComponent(() => import('../pages/scale.tsx'), 'ScalePage'),
});
const mass = createRoute({
  getParentRoute: () => study,
  path: '/mass',
  component: lazyRouteComponent(() => import('../pages/mass.tsx'), 'MassPage'),
});
const dry = createRoute({
  getParentRoute: () => study,
  path: '/dry',
  component: lazyRouteComponent(() => import('../pages/keeping-dry.tsx'), 'KeepingDryPage'),
});
const joints = createRoute({
  getParentRoute: () => study,
  path: '/joints',
  component: lazyRouteComponent(() => import('../pages/joints.tsx'), 'JointsPage'),
});
const cost = createRoute({
  getParentRoute: () => study,
  path: '/cost',
  component: lazyRouteComponent(() => import('../pages/cost.tsx'), 'CostPage'),
});
const floors = createRoute({
  getParentRoute: () => study,
  path: '/floors',
  component: lazyRouteComponent(() => import('../pages/floors.tsx'), 'FloorsPage'),
});
const claims = createRoute({
  getParentRoute: () => study,
  path: '/claims',
  component: lazyRouteComponent(() => import('../pages/claims.tsx'), 'ClaimsPage'),
});
const history = createRoute({
  getParentRoute: () => study,
  path: '/history',
  component: lazyRouteComponent(() => import('../pages/history.tsx'), 'HistoryPage'),
});
const imports = createRoute({
  getParentRoute: () => study,
  path: '/import',
  component: lazyRouteComponent(() => import('../pages/import-tables.tsx'), 'ImportPage'),
});

export const router = createRouter({
  routeTree: root.addChildren([
    studies,
    study.addChildren([
      ...[overview, hoist, scale, parts, map, mass, joints, floors, dry, cost],
      ...[questions, question, claims, history, imports],
      walkaround,
    ]),
  ]),
  defaultPreload: 'intent',
  defaultErrorComponent: PageBroke,
});

declare module '@tanstack/react-router' {
  interface Register {
    router: typeof router;
  }
}
