package dev.ringout.imports.list;

/**
 * How the texts of one column name points; judged over the column as a whole, since a single text
 * such as {@code Drive 1} can't tell.
 *
 * @param kind whether and how item and pin stand in one cell
 * @param separator what stands between item and pin where the kind is {@link Kind#SEPARATED}
 */
public record Grammar(Kind kind, String separator) {

  /** Each text by itself, as it looks. */
  public static final Grammar AS_IT_LOOKS = new Grammar(Kind.AS_IT_LOOKS, "");

  /** The whole text is the item's name. */
  public static final Grammar ITEM_ALONE = new Grammar(Kind.ITEM_ALONE, "");

  /** How item and pin stand in one cell. */
  public enum Kind {
    /** Each text by itself. */
    AS_IT_LOOKS,
    /** The whole text is an item's name: a number at its end is no pin. */
    ITEM_ALONE,
    /** The item, one and the same separator, the pin. */
    SEPARATED
  }

  /** Item and pin with this between them; the last one where it stands several times. */
  public static Grammar separatedBy(String separator) {
    return new Grammar(Kind.SEPARATED, separator);
  }

  /** What the user writes for it: {@code none}, {@code blank}, or the separator itself. */
  public String word() {
    return switch (kind) {
      case AS_IT_LOOKS -> "any";
      case ITEM_ALONE -> "none";
      case SEPARATED -> separator.equals(" ") ? "blank" : separator;
    };
  }

  /** A grammar by the user's word for it. */
  public static Grammar of(String word) {
    return switch (word) {
      case "any" -> AS_IT_LOOKS;
      case "none" -> ITEM_ALONE;
      case "blank", " " -> separatedBy(" ");
      default -> separatedBy(word);
    };
  }
}
