package dev.ringout.serve;

/** What went wrong in the program itself. */
final class Mistake {
  private Mistake() {}

  /** Has it kept, and gives what the page is told. */
  static Reply told(Handler handler, Throwable cause) {
    try {
      return handler.failed(cause);
    } catch (RuntimeException | Error e) {
      return Reply.text(500, "The program made a mistake.");
    }
  }
}
