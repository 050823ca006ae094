/** The system's refusals in words. */

const SYSTEM_REASONS: Readonly<Record<string, string>> = {
  ENOENT: "no such file or folder",
  EISDIR: "is a folder, not a file",
  EACCES: "may not be opened with your rights",
  EPERM: "may not be changed with your rights",
  ENOTDIR: "a part of the path is not a folder",
  EROFS: "lies on a disk that cannot be written",
  ENOSPC: "the disk is full",
  ELOOP: "its links lead in a circle",
  ENAMETOOLONG: "the name is too long",
};

/** Why the system refused, as the end of a sentence. */
export function systemReason(error: unknown): string {
  const code = error instanceof Error && "code" in error ? String(error.code) : "";
  return SYSTEM_REASONS[code] ?? (error instanceof Error ? error.message : String(error));
}
