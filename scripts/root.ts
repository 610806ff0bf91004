import { fileURLToPath } from 'node:url';

/** The project's root folder, with no slash at the end. */
export const ROOT = fileURLToPath(new URL('..', import.meta.url)).replace(/\/$/, '');
