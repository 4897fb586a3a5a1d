package dev.ringout.sheet;

import java.util.List;

/** How the cells of a text stand in its lines, where no separator parts them. */
sealed interface TextLines permits AlignedText, BarredText {
  /** The cells of a line; none where it holds nothing. */
  List<Cell> cells(String line);
}
