package dev.ringout.words;

import dev.ringout.work.NoFace;

/** What is to be said of the picture of a connector's face. */
public final class FaceWords {
  private FaceWords() {}

  /** Why there is none. */
  public static String sentence(NoFace why) {
    return switch (why) {
      case IN_NO_TABLE ->
          "no face picture: Pins gives no X and Y for it, and its arrangement is in no table";
      case PINS_OR_SOCKETS ->
          "no face picture: neither its kind nor its contacts say whether it has pins or sockets,"
              + " and one is the mirror image of the other";
    };
  }
}
