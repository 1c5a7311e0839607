/** Trouble of the machine round us: a full disk, a folder that may not be written, a port that is taken. */
export type Outside = NodeJS.ErrnoException & {
  readonly code: string;
  readonly syscall: string;
  readonly dest?: string;
};

/** The trouble of the machine in an error, or in the one that a library wrapped in its own; null where there is none. */
export function outsideOf(error: unknown): Outside | null {
  if (!(error instanceof Error)) return null;
  if ('syscall' in error && typeof error.syscall === 'string' && 'code' in error && typeof error.code === 'string')
    return error as Outside;
  return outsideOf('originalError' in error ? error.originalError : error.cause);
}

/** What happened, with its place, and what to do. */
export function outsideSaid({ code, syscall, path, dest, message }: Outside): string {
  if (syscall === 'uv_cwd') return 'The folder that this was called in is gone. Go into another one and call again.';
  const place = dest ?? path ?? 'a file';
  switch (code) {
    case 'EADDRINUSE':
      return 'That port is taken by another program. Write  --port 0  for any free one.';
    case 'ENOSPC':
    case 'EDQUOT':
      return `The disk is full: ${place} could not be written. Make room and call again, or write to another disk with --out.`;
    case 'EFBIG':
      return `The machine does not allow ${place} to be that large. Raise the limit (ulimit -f) and call again.`;
    case 'EROFS':
    case 'EACCES':
    case 'EPERM':
      return `The machine does not allow it (${code}): ${syscall} of ${place}. Ask for the right to it, or write to another folder with --out.`;
    case 'EMFILE':
    case 'ENFILE':
      return 'The machine lets no more files be open at once. Close other programs, or raise that limit (ulimit -n), and call again.';
    case 'ENOENT':
      return `${place} is not there, or is gone by now: ${syscall} found nothing. Call again once it is back.`;
    default:
      return `The machine would not do it: ${message}`;
  }
}
