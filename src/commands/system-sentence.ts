/** The system's errors in a sentence: what happened, where, and what to do. */

const SENTENCES: Readonly<Record<string, readonly [what: string, remedy: string]>> = {
  ENOSPC: ["The disk is full", "Make room and run it again"],
  EDQUOT: ["Your share of the disk is used up", "Make room and run it again"],
  EFBIG: ["A file would be larger than the disk allows", "Write it to another disk"],
  EROFS: ["The disk can only be read", "Name a folder on another one"],
  EACCES: ["Permission is denied", "Name a folder that is yours, or have it opened to you"],
  EPERM: ["The system does not allow it", "Name a folder that is yours"],
  ENOENT: ["There is no such file or folder, and none can be made there", "Check the path"],
  ENOTDIR: ["A part of the path is a file and not a folder", "Check the path"],
  EISDIR: ["A folder stands where a file must be", "Name another file"],
  EEXIST: ["Something of this name is there already", "Name another, or take it away"],
  ENAMETOOLONG: ["The name is too long for the disk", "Name a shorter one"],
  ELOOP: ["A link leads back to itself", "Take the link away"],
  EBUSY: ["Something else is using it", "Close what has it open and run it again"],
  ETXTBSY: ["Something else is using it", "Close what has it open and run it again"],
  EMFILE: ["Too many files are open", "Close other programs and run it again"],
  ENFILE: ["Too many files are open", "Close other programs and run it again"],
  ENOMEM: ["There is not enough memory", "Close other programs and run it again"],
  EIO: ["The disk cannot be read or written", "Check the disk"],
  EINVAL: ["The system does not allow it there", "Name a folder on an ordinary disk"],
  ENXIO: ["The system does not allow it there", "Name a folder on an ordinary disk"],
  EOPNOTSUPP: ["The system does not allow it there", "Name a folder on an ordinary disk"],
  EXDEV: ["It lies on another disk", "Name a folder on one disk"],
};

/** Undefined for what is no error of the system. */
export function systemSentence(error: Error): string | undefined {
  const { code, path, dest } = error as NodeJS.ErrnoException & { readonly dest?: string };
  const found = code === undefined ? undefined : SENTENCES[code];
  if (found === undefined) return undefined;
  const places = [path, dest].filter((one) => one !== undefined).join(", ");
  return `${found[0]}${places === "" ? "" : `: ${places}`} (${code}). ${found[1]}.`;
}
