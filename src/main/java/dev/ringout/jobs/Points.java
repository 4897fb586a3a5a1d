package dev.ringout.jobs;

import dev.ringout.intake.PointSearch;
import dev.ringout.jobs.WrongRequest.Part;

/** A point that a request names, as somebody says it. */
final class Points {
  private Points() {}

  static PointSearch.Found find(PointSearch search, String words) throws WrongRequest {
    PointSearch.Result result = search.find(words);
    if (result.found().isEmpty()) {
      throw wrong(result);
    }
    return result.found().get();
  }

  /** Why a request that names what was not found is wrong. */
  static WrongRequest wrong(PointSearch.Result result) {
    PointSearch.NotFound not = result.notFound().orElseThrow();
    return new WrongRequest(
        Part.POINT, not.text() + (not.maybe().isEmpty() ? "" : "; maybe " + not.maybe()));
  }
}
