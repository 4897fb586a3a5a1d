package dev.ringout.serve;

/** What a browser may do with an answer (Content Security Policy Level 3). */
enum Policy {
  /** The page, and all that it loads. */
  PAGE(
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob: data:; "
          + "connect-src 'self'; media-src 'self'; frame-src 'self'; form-action 'none'; "
          + "base-uri 'none'; frame-ancestors 'self'; require-trusted-types-for 'script'"),
  /** A paper carries its styles and pictures in itself, and runs nothing. */
  PAPER(
      "default-src 'none'; style-src 'unsafe-inline'; img-src data:; font-src data:; "
          + "form-action 'none'; base-uri 'none'; frame-ancestors 'self'");

  private final String text;

  Policy(String text) {
    this.text = text;
  }

  String text() {
    return text;
  }
}
