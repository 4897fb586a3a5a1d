package dev.ringout.jobs;

import dev.ringout.intake.PointSearch;
import dev.ringout.jobs.WrongRequest.Part;

/** A point that a request names, as somebody says it. */
final class Points {
  private Points() {}

  static PointSearch.Found find(PointSearch search, String words) throws WrongRequest {
    PointSearch.Result result = search.find(words);
    if (result instanceof PointSearch.Found found) {
      return found;
    }
    throw notFound((PointSearch.NotFound) result);
  }

  static WrongRequest notFound(PointSearch.NotFound not) {
    return new WrongRequest(
        Part.POINT, not.text() + (not.maybe().isEmpty() ? "" : "; maybe " + not.maybe()));
  }
}
