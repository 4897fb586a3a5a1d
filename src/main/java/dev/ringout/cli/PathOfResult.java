package dev.ringout.cli;

import java.nio.file.Path;
import picocli.CommandLine.ITypeConverter;

/** Where a result goes: always a file or a folder, and never a unit of the store. */
final class PathOfResult implements ITypeConverter<Path> {
  @Override
  public Path convert(String typed) {
    return Path.of(typed);
  }
}
