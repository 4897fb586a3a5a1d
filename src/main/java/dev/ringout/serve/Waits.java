package dev.ringout.serve;

import java.time.Duration;

/**
 * How long somebody outside is waited for.
 *
 * @param headers until the lines before a body are here: a browser sends them at once
 * @param body until all of it is here
 * @param answer until a piece of an answer is taken
 * @param events until events are taken: a page that takes none is left alone
 * @param quiet after which a stream of events says that it is still there; that a page went away is
 *     noticed when something is written to it
 */
record Waits(Duration headers, Duration body, Duration answer, Duration events, Duration quiet) {
  static final Waits USUAL =
      new Waits(
          Duration.ofSeconds(10),
          Duration.ofSeconds(20),
          Duration.ofSeconds(20),
          Duration.ofSeconds(5),
          Duration.ofSeconds(5));
}
