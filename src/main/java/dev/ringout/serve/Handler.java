package dev.ringout.serve;

/** Answers what a page that was let in asks. Several threads ask at the same time. */
public interface Handler {
  /** The answer. It is written to a page that may be slow, so nothing may be held for it. */
  Reply answer(Ask ask);

  /** Whether an address is answered to who has not signed in: where that is done. */
  default boolean isForStrangers(String path) {
    return false;
  }

  /** Whether who signed in with a browser is still let in. */
  default boolean isStill(Guest guest) {
    return true;
  }

  /** Nobody of that name is in any more. */
  default void gone(String who) {}

  /** What may be sent to an address; asked before anything of it is read. */
  BodyRule body(String path);

  /**
   * What is said where an answer could not be made. The cause is kept here, and is nothing for the
   * page.
   */
  Reply failed(Throwable cause);
}
