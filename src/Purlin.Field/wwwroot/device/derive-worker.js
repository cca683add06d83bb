// Draws the small pictures of an original, away from the thread that the thumb is waiting for.

/** @param {ImageBitmap} bitmap @param {number} longest */
async function reduced(bitmap, longest) {
  const scale = Math.min(1, longest / Math.max(bitmap.width, bitmap.height));
  const canvas = new OffscreenCanvas(Math.max(1, Math.round(bitmap.width * scale)), Math.max(1, Math.round(bitmap.height * scale)));
  const ink = canvas.getContext('2d');
  if (!ink) throw new Error('no canvas');
  ink.imageSmoothingQuality = 'high';
  ink.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality: longest > 1000 ? 0.82 : 0.75 });
  return blob.arrayBuffer();
}

self.onmessage = async event => {
  const { id, bytes, type, sizes } = event.data;
  try {
    const bitmap = await createImageBitmap(new Blob([bytes], { type }), { imageOrientation: 'from-image' });
    const { width, height } = bitmap;
    const views = [];
    for (const size of sizes) views.push({ size, bytes: await reduced(bitmap, size) });
    bitmap.close();
    self.postMessage({ id, width, height, views });
  } catch {
    self.postMessage({ id, views: [] });
  }
};
