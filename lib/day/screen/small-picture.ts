const LONGEST_SIDE = 1600;
const QUALITY = 0.85;

/**
 * Draws a picture anew, no larger than the log needs. Drawing takes only what is seen: the place where it was taken is
 * not in the result.
 */
export async function smallPicture(file: Blob): Promise<Blob | null> {
  try {
    const drawn = await createImageBitmap(file, { imageOrientation: "from-image" });
    const scale = Math.min(1, LONGEST_SIDE / Math.max(drawn.width, drawn.height));
    const canvas = document.createElement("canvas");
    canvas.width = Math.max(1, Math.round(drawn.width * scale));
    canvas.height = Math.max(1, Math.round(drawn.height * scale));
    canvas.getContext("2d")?.drawImage(drawn, 0, 0, canvas.width, canvas.height);
    drawn.close();
    return await new Promise((resolve) => canvas.toBlob(resolve, "image/jpeg", QUALITY));
  } catch {
    return null;
  }
}
