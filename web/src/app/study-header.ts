import { createContext, useContext } from 'react';
import type { StudyHeader } from '../worker/header-of.ts';

const HeaderContext = createContext<StudyHeader | undefined>(undefined);
export const HeaderProvider = HeaderContext.Provider;

/** What the open study is called, its condition, rates and revision. */
export function useHeader(): StudyHeader {
  const header = useContext(HeaderContext);
  if (!header) throw new TypeError('the page stands outside a study');
  return header;
}
