package dev.ringout.cli;

import java.nio.file.FileSystems;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;

/** Files that only their owner may read. */
final class Secret {
  private Secret() {}

  /** With which rights such a file is made; where the system knows no such rights, with its own. */
  static List<FileAttribute<?>> rights() {
    return FileSystems.getDefault().supportedFileAttributeViews().contains("posix")
        ? List.of(
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------")))
        : List.of();
  }
}
