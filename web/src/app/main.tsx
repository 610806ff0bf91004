import '../styles/index.css';
import { QueryClientProvider } from '@tanstack/react-query';
import { RouterProvider } from '@tanstack/react-router';
import { createRoot } from 'react-dom/client';
import { ClientProvider, queries, startClient } from './desk-client.ts';
import { keepPages } from './pages-kept.ts';
import { applyPreferences } from './preferences.ts';
import { router } from './router.tsx';

applyPreferences();
void keepPages();
const root = document.getElementById('page');
if (!root) throw new TypeError('index.html has no #page');
const client = await startClient();
createRoot(root).render(
  <ClientProvider value={client}>
    <QueryClientProvider client={queries}>
      <RouterProvider router={router} />
    </QueryClientProvider>
  </ClientProvider>,
);
