package dev.ringout.sheet;

import dev.ringout.source.FileBytes;
import java.util.HexFormat;

/** What a file is packed in, by its first bytes and never by its name. */
enum Container {
  /** A zip with something in it: .xlsx and .ods (APPNOTE.TXT, PKWARE, 4.3.7). */
  ZIP("504b0304"),
  /** A compound file: .xls ([MS-CFB], Microsoft, 2.2). */
  COMPOUND("d0cf11e0a1b11ae1"),
  /** Neither. */
  NONE("");

  private static final int LONGEST = 8;

  private final String begins;

  Container(String begins) {
    this.begins = begins;
  }

  static Container of(FileBytes file) {
    String first = HexFormat.of().formatHex(file.first(LONGEST));
    return first.startsWith(ZIP.begins) ? ZIP : first.startsWith(COMPOUND.begins) ? COMPOUND : NONE;
  }
}
