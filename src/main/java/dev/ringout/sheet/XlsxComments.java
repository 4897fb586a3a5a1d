package dev.ringout.sheet;

import dev.ringout.sheet.Surroundings.Spot;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.apache.poi.ss.util.CellReference;
import org.xml.sax.Attributes;
import org.xml.sax.helpers.DefaultHandler;

/** The comments pinned to a sheet's cells. */
final class XlsxComments extends DefaultHandler {
  private final Map<Spot, String> comments = new LinkedHashMap<>();
  private final XlsxRuns runs = new XlsxRuns();
  private Spot spot = new Spot(0, 0);

  Map<Spot, String> comments() {
    return Collections.unmodifiableMap(comments);
  }

  @Override
  public void startElement(String uri, String local, String qualified, Attributes attributes) {
    if (local.equals("comment")) {
      CellReference reference = new CellReference(String.valueOf(attributes.getValue("ref")));
      spot = new Spot(reference.getRow() + 1, reference.getCol() + 1);
      runs.clear();
    } else {
      runs.start(local, attributes);
    }
  }

  @Override
  public void characters(char[] characters, int start, int length) {
    runs.characters(characters, start, length);
  }

  @Override
  public void endElement(String uri, String local, String qualified) {
    if (local.equals("comment")) {
      comments.put(spot, runs.text().strip());
    } else {
      runs.end(local);
    }
  }
}
