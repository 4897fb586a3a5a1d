package dev.ringout.revision;

import dev.ringout.harness.Item;
import java.util.Locale;

/** What a list says of an item besides its name. */
public enum ItemField {
  KIND,
  PART,
  ARRANGEMENT,
  LOCATION,
  MATES;

  /** What an item's row says; empty where it says nothing. */
  public String of(Item item) {
    return switch (this) {
      case KIND -> item.kind();
      case PART -> item.part();
      case ARRANGEMENT -> item.arrangement();
      case LOCATION -> item.location();
      case MATES -> item.mates();
    };
  }

  /** The word for it in every output. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** Whether it is another item that has to be fitted, not only another word on paper. */
  public boolean isOfTheItemItself() {
    return this == KIND || this == PART || this == ARRANGEMENT;
  }
}
