package dev.ringout.sheet;

import java.util.Optional;
import org.apache.poi.hssf.record.PaletteRecord;
import org.apache.poi.hssf.usermodel.HSSFWorkbook;

/**
 * The colours of an older workbook ([MS-XLS] 2.4.188 Palette, 2.5.161 Icv). Looked for among its
 * records: the library goes by where it thinks the palette is, and fails where other programs have
 * written more records before it than it counts.
 */
final class XlsColours {
  private final PaletteRecord palette;

  XlsColours(HSSFWorkbook workbook) {
    this.palette =
        workbook.getInternalWorkbook().getRecords().stream()
            .filter(PaletteRecord.class::isInstance)
            .map(PaletteRecord.class::cast)
            .findFirst()
            .orElseGet(PaletteRecord::new);
  }

  /** Red, green and blue of a colour by its number; absent where the palette has none of it. */
  Optional<short[]> mixture(short number) {
    byte[] mixture = palette.getColor(number);
    return mixture == null
        ? Optional.empty()
        : Optional.of(
            new short[] {
              (short) (mixture[0] & 0xff), (short) (mixture[1] & 0xff), (short) (mixture[2] & 0xff)
            });
  }
}
