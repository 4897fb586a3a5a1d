package dev.ringout.sheet;

import java.util.function.Consumer;

/**
 * Rows on their way to whoever asked for them. What goes wrong while a file is read is damage of
 * the file; what goes wrong with him is not.
 */
final class HandedOver implements Consumer<Row> {
  private final Consumer<Row> to;
  private boolean failedThere;

  HandedOver(Consumer<Row> to) {
    this.to = to;
  }

  @Override
  public void accept(Row row) {
    failedThere = true;
    to.accept(row);
    failedThere = false;
  }

  /** Whether what went wrong is not of the reading but of who was handed a row. */
  boolean hasFailedThere() {
    return failedThere;
  }
}
