import '../styles/index.css';
import { QueryClientProvider } from '@tanstack/react-query';
import { RouterProvider } from '@tanstack/react-router';
import { createRoot } from 'react-dom/client';
import { ClientProvider, queries, startClient } from './desk-client.ts';
import { keepPages } from './pages-kept.ts';
import { applyPreferences } from './preferences.ts';
import { router } from './router.tsx';

applyPreferences();
if (import.meta.env.PROD) void keepPages();
const root = document.getElementById('page');
if (!root) throw new TypeError('index.html has no #page');
createRoot(root).render(
  <ClientProvider value={startClient()}>
    <QueryClientProvider client={queries}>
      <RouterProvider router={router} />
    </QueryClientProvider>
  </ClientProvider>,
);
