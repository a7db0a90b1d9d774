/** A photograph of 50 megapixels in good quality is smaller than this. */
export const photoBytesAtMost = 30 * 1024 * 1024
