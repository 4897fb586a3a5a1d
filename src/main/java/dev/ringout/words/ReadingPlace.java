package dev.ringout.words;

import dev.ringout.readings.Reading;
import dev.ringout.readings.ReadingSet;
import dev.ringout.source.Place;
import java.util.Locale;

/** Where a reading is looked for: file, sheet and cell as far as they are needed, and its step. */
public final class ReadingPlace {
  private final boolean severalFiles;

  public ReadingPlace(ReadingSet readings) {
    severalFiles = readings.jobs().size() > 1;
  }

  /** The cell; its file's name where several were read. */
  public String cell(Place place) {
    if (severalFiles) {
      return place.toString();
    }
    if (!place.sheet().isEmpty()) {
      return (place.sheet() + " " + place.cell()).strip();
    }
    int inFolder = place.file().lastIndexOf('/');
    return (inFolder < 0 ? "" : place.file().substring(inFolder + 1) + " ") + place.cell();
  }

  /** The cell where the sheet is known by the kind of the reading that stands beside it. */
  public String cellOfKind(Reading reading) {
    Place place = reading.place();
    if (place.cell().isEmpty()) {
      return place.toString();
    }
    String kind = reading.kind().name().toLowerCase(Locale.ROOT);
    boolean isSheetOfKind = place.sheet().isEmpty() || place.sheet().equalsIgnoreCase(kind);
    String sheet = isSheetOfKind ? "" : place.sheet() + " ";
    return (severalFiles ? place.file() + " " : "") + sheet + place.cell();
  }

  /** {@code step 36}, or empty where the row has none. */
  public static String step(Reading reading) {
    String step = reading.step().strip();
    boolean saysSo = step.toLowerCase(Locale.ROOT).startsWith("step");
    return step.isEmpty() || saysSo ? step : "step " + step;
  }

  /** Cell and step: {@code Continuity E9, step 4}. */
  public String of(Reading reading) {
    String step = step(reading);
    return cell(reading.place()) + (step.isEmpty() ? "" : ", " + step);
  }
}
