package dev.ringout.revision;

import java.util.List;

/** Why a reading is to be taken again after rework. */
public sealed interface RetestReason {

  /** What is made of it, by its kind. */
  <T> T match(Cases<T> cases);

  /** Wires on its way were made new or put elsewhere. */
  record WiresTouched(List<String> wires) implements RetestReason {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.wiresTouched(this);
    }
  }

  /**
   * Items on its nets were opened.
   *
   * @param isolation whether it shows that nets are apart
   */
  record ItemsOpened(List<String> items, boolean isolation) implements RetestReason {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.itemsOpened(this);
    }
  }

  /**
   * It lies beside what was touched.
   *
   * @param isolation whether it shows that nets are apart
   */
  record BesideTheWork(boolean isolation) implements RetestReason {
    @Override
    public <T> T match(Cases<T> cases) {
      return cases.besideTheWork(this);
    }
  }

  /** One answer for each kind. */
  interface Cases<T> {
    /** See {@link WiresTouched}. */
    T wiresTouched(WiresTouched why);

    /** See {@link ItemsOpened}. */
    T itemsOpened(ItemsOpened why);

    /** See {@link BesideTheWork}. */
    T besideTheWork(BesideTheWork why);
  }
}
