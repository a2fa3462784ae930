/** Longest side of a photo that is kept [px]. */
const longest = 1280;
const quality = 0.72;

/**
 * A photo small enough to keep and to send. It is drawn anew, so that nothing of the file goes along but what is to be seen:
 * no place, no time, no name of the phone.
 */
export async function shrunk(photo: Blob): Promise<Blob> {
  const picture = await createImageBitmap(photo, { imageOrientation: 'from-image' });
  const scale = Math.min(1, longest / Math.max(picture.width, picture.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(picture.width * scale));
  canvas.height = Math.max(1, Math.round(picture.height * scale));
  canvas.getContext('2d')?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  picture.close();
  return new Promise((resolve, reject) => {
    canvas.toBlob(
      (blob) => (blob === null ? reject(new Error('the photo could not be drawn')) : resolve(blob)),
      'image/jpeg',
      quality,
    );
  });
}
