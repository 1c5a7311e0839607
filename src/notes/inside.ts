/** A bare name in one folder: no step out of it, no drive, no address, nothing that is hidden or cannot be seen. */
export const isBareName = (file: string): boolean =>
  /^[^./\\~][^/\\:?#%*"<>|]*$/.test(file) && !/[\p{Cc}\p{Cf}]/u.test(file) && file.trim() === file;
