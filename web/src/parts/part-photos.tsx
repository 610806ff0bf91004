import { type ChangeEvent, useState } from 'react';
import type { Photo } from '../../../src/study/index.ts';
import { useClient, useDesk } from '../app/desk-client.ts';
import { recorder } from '../app/preferences.ts';
import { PhotoShown } from './photo-shown.tsx';
import { Refusals } from './refusals.tsx';

export interface PartPhotosProps {
  readonly node: string;
  readonly label: string;
}

/** Photographs of the part in hand: seen, taken and added, with a network or without. */
export function PartPhotos({ node, label }: PartPhotosProps) {
  const { data } = useDesk(['photos', node], (desk) => desk.photos(node));
  return (
    <section className="photos" aria-label={`Photographs of ${label}`}>
      <h3>Photographs</h3>
      {data && data.length > 0 && (
        <ul>
          {data.map((photo) => (
            <li key={photo.id}>
              <PhotoShown photo={photo} words={wordsOf(photo, label)} />
            </li>
          ))}
        </ul>
      )}
      <AddPhotos node={node} />
    </section>
  );
}

const wordsOf = ({ caption, takenAt }: Photo, label: string): string =>
  `${caption === '' ? label : caption}, ${takenAt.local.replace('T', ' ').slice(0, 16)}`;

/** Two ways in: the camera of a tablet, and files. */
function AddPhotos({ node }: { readonly node: string }) {
  const { desk } = useClient();
  const [error, setError] = useState<unknown>();
  const [left, setLeft] = useState(0);
  const add = async (event: ChangeEvent<HTMLInputElement>) => {
    const input = event.currentTarget;
    const files = [...(input.files ?? [])];
    setError(undefined);
    setLeft(files.length);
    try {
      for (const [i, file] of files.entries()) {
        await desk.addPhoto({ file, subject: node, caption: '' }, recorder());
        setLeft(files.length - i - 1);
      }
    } catch (problem) {
      setError(problem);
    }
    setLeft(0);
    // The same file may be chosen again.
    input.value = '';
  };
  return (
    <>
      <div className="acts">
        <label className="file-button">
          Take a photograph
          <input type="file" accept="image/jpeg,image/png" capture="environment" onChange={add} />
        </label>
        <label className="file-button">
          Add files
          <input type="file" accept="image/jpeg,image/png" multiple onChange={add} />
        </label>
      </div>
      {left > 0 && <p role="status">{left} to be kept</p>}
      <Refusals error={error} />
    </>
  );
}
