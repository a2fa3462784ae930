import { useEffect, useRef, useState } from 'react';
import { dropPhoto, keepPhoto, photosOf } from './keep.ts';
import { shrunk } from './shrinkPhoto.ts';

type Trouble = 'unread' | 'unkept' | null;

const troubles: Readonly<Record<NonNullable<Trouble>, string>> = {
  unread: 'That is no photo that can be read. Take another.',
  unkept: 'The photo could not be kept: the device is full or keeps nothing.',
};

/** A photo beside a reading, with the tape in it. It stays on this device until somebody sends it in a file. */
export function PhotoButton({ session, path }: { readonly session: string; readonly path: string }) {
  const [photo, setPhoto] = useState<Blob | null>(null);
  const [trouble, setTrouble] = useState<Trouble>(null);
  const input = useRef<HTMLInputElement>(null);
  useEffect(() => {
    let isHere = true;
    photosOf(session).then(
      (photos) => {
        if (isHere) setPhoto(photos.get(path) ?? null);
      },
      () => setTrouble(null),
    );
    return () => {
      isHere = false;
    };
  }, [session, path]);
  const take = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    const small = await shrunk(file).catch(() => null);
    if (small === null) return setTrouble('unread');
    setPhoto(small);
    setTrouble(
      await keepPhoto(session, path, small).then(
        () => null,
        () => 'unkept' as const,
      ),
    );
  };
  const remove = (): void => {
    setPhoto(null);
    void dropPhoto(session, path);
  };
  return (
    <div className="photo">
      <input
        ref={input}
        type="file"
        accept="image/*"
        capture="environment"
        className="unseen"
        tabIndex={-1}
        aria-hidden="true"
        onChange={({ target }) => void take(target.files?.[0])}
      />
      <button type="button" onClick={() => input.current?.click()}>
        {photo === null ? 'Photo' : 'Another photo'}
      </button>
      {photo === null ? null : (
        <>
          <PhotoImage blob={photo} />
          <button type="button" onClick={remove}>
            Remove
          </button>
        </>
      )}
      {trouble === null ? null : <p role="alert">{troubles[trouble]}</p>}
    </div>
  );
}

function PhotoImage({ blob }: { readonly blob: Blob }) {
  const image = useRef<HTMLImageElement>(null);
  useEffect(() => {
    const address = URL.createObjectURL(blob);
    if (image.current !== null) image.current.src = address;
    return () => URL.revokeObjectURL(address);
  }, [blob]);
  return <img ref={image} alt="Your photo of this reading" />;
}
