package dev.ringout.words;

import dev.ringout.imports.list.DamagedCell;
import dev.ringout.imports.list.Finding;
import dev.ringout.imports.list.KblOddity;
import dev.ringout.imports.list.Layout;
import dev.ringout.imports.list.Oddity;
import dev.ringout.imports.list.OddityKind;
import dev.ringout.imports.list.RowOddity;
import dev.ringout.imports.list.SheetOddity;
import dev.ringout.imports.list.SkipReason;
import dev.ringout.imports.list.WiringOddity;
import dev.ringout.source.Problem;
import java.util.List;

/** What an import has to say of a list. */
public final class ImportWords {
  private ImportWords() {}

  private static final class Families implements Oddity.Families<OddityWords> {
    private final DamagedCellWords cells = new DamagedCellWords();
    private final RowOddityWords rows = new RowOddityWords();
    private final WiringOddityWords wiring = new WiringOddityWords();
    private final SheetOddityWords sheets = new SheetOddityWords();
    private final KblOddityWords kbl = new KblOddityWords();

    @Override
    public OddityWords damagedCell(DamagedCell odd) {
      return odd.match(cells);
    }

    @Override
    public OddityWords rowOddity(RowOddity odd) {
      return odd.match(rows);
    }

    @Override
    public OddityWords wiringOddity(WiringOddity odd) {
      return odd.match(wiring);
    }

    @Override
    public OddityWords sheetOddity(SheetOddity odd) {
      return odd.match(sheets);
    }

    @Override
    public OddityWords kblOddity(KblOddity odd) {
      return odd.match(kbl);
    }
  }

  /** A finding as a problem of the file: its sentence, and what was probably meant. */
  public static Problem problem(Finding finding) {
    OddityWords words = finding.oddity().matchFamily(new Families());
    return new Problem(
        finding.place(), finding.heading(), finding.severity(), words.text(), words.meant());
  }

  /** Findings for a person to read: many that are alike are one with its count and places. */
  public static List<Problem> grouped(List<Finding> findings) {
    return GroupedFindings.of(findings);
  }

  /** What a sort of mess is. */
  public static String kind(OddityKind kind) {
    return switch (kind) {
      case DATE -> "a date that was a pin";
      case TIME -> "a time that was a point";
      case EXPONENT -> "a number with an exponent that was a name";
      case LEADING_ZERO -> "a leading zero lost";
      case SIGN -> "a sign that may have been a dash or a polarity";
      case LONG_NUMBER -> "a number with more digits than a spreadsheet keeps";
      case BOOLEAN -> "TRUE or FALSE that was a letter";
      case ERROR_VALUE -> "an error value";
      case NO_RESULT -> "a formula without a result";
      case FILL_DRAG -> "a series made by dragging a cell down";
      case CASE_TWIN -> "two spellings that differ only in capital and small letters";
      case HIDDEN -> "hidden rows, columns or sheets";
      case FILTERED -> "a filtered view";
      case STRUCK -> "struck-through text";
      case COMMENT -> "a comment on a cell";
      case RED -> "red text";
      case FILL -> "a fill that the list does not explain";
      case BLANKS -> "blanks that can't be seen";
      case DASH -> "dashes and quotes that only look alike";
      case DITTO -> "marks for \"as above\"";
      case CARRIED -> "blanks carried down";
      case MERGED -> "merged cells";
      case SEVERAL -> "several points in a cell";
      case RANGE -> "a range of pins";
      case NO_PIN -> "an end without a pin";
      case NO_END -> "a wire without an end";
      case STOWED -> "a wire end that is stowed";
      case GAUGE -> "a gauge without a unit, or none";
      case LENGTH -> "a length without a unit, or none";
      case ONE_SIDED -> "a wire listed at one end only";
      case ENDS_DIFFER -> "two ends of a wire that disagree";
      case PIN_TWICE -> "a pin with two far ends";
      case WIRE_TWICE -> "a wire number used twice";
      case DUPLICATE -> "a row given twice";
      case MARKS -> "marks that you have to explain";
      case NAMES -> "rows that share a name";
      case NAMES_DIFFER -> "two names in one row";
      case ALIAS -> "two names for one point or item";
      case CODE -> "a code without a meaning";
      case HEADER -> "two values for a fact of the header";
      case HEADING -> "headings that are not clear";
      case NO_WIRES -> "a sheet without wires";
      case NOT_USED -> "cells that are not used";
      case IN_DOUBT -> "what the list itself leaves open";
      case UNDECIDED -> "a table that can be read in several ways";
      case REFERENCE -> "a reference that leads nowhere";
      case MODULES -> "modules, of which a unit has only some";
      case PARTS -> "parts that are not read";
    };
  }

  /** What a row of a table is, by its layout. */
  public static String layout(Layout layout) {
    return switch (layout) {
      case FROM_TO -> "a row is a wire from one point to another";
      case BLOCK -> "a row is a pin of one connector and the point that it goes to";
      case ITEM_TO_POINTS -> "a row is a conductor of a device and the terminal that it goes to";
      case TERMINALS -> "a row is a terminal with a wire on either side";
      case PATHS -> "a row is a path from point to point";
      case NET_LIST -> "a row is a pin and the net on which it is";
      case ROW_NETS -> "a row is one net through a pin of each item that holds one";
      case MARKS -> "marks say which device uses which terminal";
      case WIRE_ENDS -> "a row is a pin and the number of the wire that ends there";
      case OPEN_ENDED -> "a row is a pin and its wire; the far end is not named";
      case PIN_NAMES -> "a row is a pin and its name; wires are not told";
      case CONNECTIONS -> "a connection is a wire between contacts of two items";
      case NONE -> "no wires";
    };
  }

  /** Why a row was skipped. */
  public static String skipped(SkipReason reason) {
    return switch (reason) {
      case STRUCK_THROUGH -> "struck through: taken as deleted";
      case SAYS_DELETED -> "says that it is deleted";
      case FILL_MEANS_DELETED -> "filled with a colour that means deleted";
      case CELL_NOT_READ -> "a cell that the wire needs could not be read";
      case FAR_PIN_WITHOUT_ITEM -> "a far pin without its item";
      case WIRE_WITHOUT_ENDS -> "a wire without ends";
      case RANGE_WITH_ONE_FAR_END -> "a range of pins with one far end";
      case NO_PIN_HERE -> "no pin here";
      case NO_CONDUCTOR -> "no conductor";
      case CODE_NOT_EXPLAINED -> "a code that the legend does not explain";
      case SEVERAL_AT_BOTH_ENDS -> "several points at both ends";
      case NO_OTHER_END -> "no other end";
      case END_IN_DOUBT -> "an end that the list leaves open";
      case ROWS_LEFT_OUT -> "rows that are left out";
      case MARKS_NOT_TAKEN -> "marks that are not taken as wires";
      case SAME_ONCE_MORE -> "the same wire and ends once more";
      case REFERENCE_LEADS_NOWHERE -> "a reference that is empty or leads nowhere";
      case POINT_NOT_CLEAR -> "an end with a point that is not clear";
      case OF_ASSEMBLY_PART -> "a connection of an assembly part";
      case TO_ITSELF -> "both ends are one point";
      case SAID_TO_BE_NO_WIRE -> "you said that it is not a wire";
      case MODULE_NOT_CHOSEN -> "of a module that was not asked for";
    };
  }
}
