package dev.ringout.sheet;

import dev.ringout.source.Place;
import dev.ringout.source.UnusableInput;
import java.util.function.Consumer;

/** One table of a file, read row by row: a large one never stands in memory as a whole. */
public interface Sheet {

  /** The sheet's name: of a CSV file its name without the ending. */
  String name();

  /** The sheet as a place; rows and cells are places within it. */
  Place place();

  /**
   * Hands over every row that holds something, from the top. May be called again.
   *
   * @return what stands around the cells
   * @throws UnusableInput where the file turns out to be damaged
   */
  Surroundings forEachRow(Consumer<Row> each) throws UnusableInput;
}
