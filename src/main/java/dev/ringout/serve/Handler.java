package dev.ringout.serve;

import java.util.List;
import java.util.Set;

/** Answers what a page that was let in asks. Several threads ask at the same time. */
public interface Handler {
  /** The answer. It is written to a page that may be slow, so nothing may be held for it. */
  Reply answer(Ask ask);

  /** Whether an address is answered to who has not signed in: where that is done. */
  default boolean isForStrangers(String path) {
    return false;
  }

  /** Which of the browsers with which somebody signed in are let in no more. */
  default Set<Guest> out(List<Guest> in) {
    return Set.of();
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
