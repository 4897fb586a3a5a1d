package dev.ringout.serve;

/** Why somebody is not answered, in one sentence. */
enum Refusal {
  PROTOCOL(400, "This address is spoken to in HTTP/1.1."),
  HOST(403, "This is not the address that the bench is served at."),
  FOREIGN(403, "Another page asked for this. Type the address into the browser instead."),
  ADDRESS(400, "This address can't be understood."),
  LONG_ADDRESS(414, "This address is too long."),
  METHOD(405, "This address is not asked in this way."),
  HEADERS(400, "A line of the request stands twice, or contradicts another one."),
  UPGRADE(400, "No other protocol is spoken here."),
  STRANGER(
      403, "This browser was not let in. Open the address that the command ringout bench printed."),
  SIGN_IN(401, "Sign in first."),
  USED(
      403,
      "This address was used before, or is of an earlier run. Open the address that the command"
          + " ringout bench printed last."),
  TYPE(415, "What was sent is not of a kind that is taken here."),
  TOO_LONG(413, "What was sent is too long."),
  FULL(503, "The bench is open in too many windows. Close one of them, and load this one again.");

  private final int status;
  private final String sentence;

  Refusal(int status, String sentence) {
    this.status = status;
    this.sentence = sentence;
  }

  Reply reply() {
    Reply reply = Reply.text(status, sentence);
    return switch (this) {
      case METHOD -> reply.with("Allow", "GET, HEAD, POST");
      // RFC 9110, 15.5.2, wants it said how; the page asks by itself.
      case SIGN_IN -> reply.with("WWW-Authenticate", "Page");
      default -> reply;
    };
  }
}
