import { type RefObject, useEffect, useState } from 'react';

/** Size of an element's content, CSS pixels; zero before it is laid out. */
export function useSize(of: RefObject<HTMLElement | null>): { width: number; height: number } {
  const [size, setSize] = useState({ width: 0, height: 0 });
  useEffect(() => {
    if (!of.current) return;
    const observer = new ResizeObserver(([entry]) => {
      if (entry) setSize({ width: entry.contentRect.width, height: entry.contentRect.height });
    });
    observer.observe(of.current);
    return () => observer.disconnect();
  }, [of]);
  return size;
}
