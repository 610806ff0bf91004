import { useEffect } from 'react';

/** Names the page in the browser's tab and history, from the particular to the general. */
export function usePageTitle(...words: readonly string[]): void {
  const title = [...words.filter((w) => w !== ''), 'Hoistside'].join(' · ');
  useEffect(() => {
    const before = document.title;
    document.title = title;
    return () => {
      document.title = before;
    };
  }, [title]);
}
