package dev.ringout.source;

import java.nio.file.FileSystems;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;

/**
 * The rights of a new file or folder that nobody but its owner looks into. Where the system knows
 * no such rights, its own.
 */
public final class OwnerOnly {
  private OwnerOnly() {}

  /** Of a file. */
  public static FileAttribute<?>[] file() {
    return rights("rw-------");
  }

  /** Of a folder. */
  public static FileAttribute<?>[] folder() {
    return rights("rwx------");
  }

  private static FileAttribute<?>[] rights(String rights) {
    return FileSystems.getDefault().supportedFileAttributeViews().contains("posix")
        ? new FileAttribute<?>[] {
          PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString(rights))
        }
        : new FileAttribute<?>[0];
  }
}
