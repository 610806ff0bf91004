import { useQuery } from '@tanstack/react-query';
import { useEffect, useState } from 'react';
import { useClient } from '../app/desk-client.ts';
import type { StoryPhoto } from '../worker/cell-story.ts';

/** Photographs with their captions; what is no picture stands by its words. */
export const PhotosShown = ({ photos }: { readonly photos: readonly StoryPhoto[] }) => (
  <>
    {photos.map((photo) => (
      <figure className="photo" key={photo.blob}>
        {photo.isPicture && <Picture photo={photo} />}
        <figcaption>{photo.caption}</figcaption>
      </figure>
    ))}
  </>
);

/** Fetched with the page's token, which an address in the page would not carry. */
function Picture({ photo: { blob, caption } }: { readonly photo: StoryPhoto }) {
  const { api } = useClient();
  const { data, error } = useQuery({
    queryKey: ['blob', blob],
    queryFn: () => api.file(`/api/blobs/${blob}`),
  });
  const url = useObjectUrl(data);
  if (error) return <p className="open">The photograph could not be fetched: {error.message}</p>;
  return url === undefined ? <p className="soft">…</p> : <img src={url} alt={caption} />;
}

/** An address for bytes at hand, given back when it is not shown any more. */
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
