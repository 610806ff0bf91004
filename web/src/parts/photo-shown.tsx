import { useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { type Photo, RefusalError } from '../../../src/study/index.ts';
import { useClient } from '../app/desk-client.ts';
import { SheetDialog } from './sheet-dialog.tsx';

export interface PhotoShownProps {
  readonly photo: Photo;
  /** What is in it and when it was taken. */
  readonly words: string;
}

/** A small picture; a touch shows it large. What is no picture by its bytes is told, not shown. */
export function PhotoShown({ photo, words }: PhotoShownProps) {
  const { desk } = useClient();
  const { data, error } = useQuery({
    queryKey: ['photo', photo.blob],
    queryFn: () => desk.photo(photo.blob),
    retry: 2,
  });
  const [isLarge, setIsLarge] = useState(false);
  const url = useObjectUrl(data);
  if (error)
    return (
      <p className="photo-missing">
        {words}: {error instanceof RefusalError ? 'no picture' : 'not on this device yet'}
      </p>
    );
  if (url === undefined) return <p className="photo-missing">{words}</p>;
  return (
    <>
      <button type="button" className="photo" onClick={() => setIsLarge(true)}>
        <img src={url} alt={words} />
      </button>
      {isLarge && (
        <SheetDialog title={words} onClose={() => setIsLarge(false)}>
          <img className="photo-large" src={url} alt={words} />
        </SheetDialog>
      )}
    </>
  );
}

/** An address of bytes for as long as they are shown. */
function useObjectUrl(bytes: Blob | undefined): string | undefined {
  const [url, setUrl] = useState<string>();
  useEffect(() => {
    if (!bytes) return undefined;
    const made = URL.createObjectURL(bytes);
    setUrl(made);
    return () => URL.revokeObjectURL(made);
  }, [bytes]);
  return url;
}
