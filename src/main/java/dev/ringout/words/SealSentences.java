package dev.ringout.words;

import dev.ringout.seal.SealFinding;
import dev.ringout.seal.SealFinding.State;

/** What looking at a sealed record showed, in words. */
public final class SealSentences {
  private SealSentences() {}

  /** How a thing stands to what was sealed, in one or two words. */
  public static String state(State state) {
    return switch (state) {
      case AS_SEALED -> "as sealed";
      case DIFFERS -> "DIFFERS";
      case NOT_SHOWN -> "not shown";
    };
  }

  /** All of it in one sentence. */
  public static String verdict(boolean differs, boolean open) {
    if (differs) {
      return "NOT AS SEALED.";
    }
    return open
        ? "Nothing differs, but not everything could be shown."
        : "As sealed: record, inputs and signature.";
  }

  /** What was found, without its state. */
  public static String sentence(SealFinding sealFinding) {
    return switch (sealFinding.kind()) {
      case SIGNATURE_GOOD -> "signature by key " + sealFinding.about();
      case SIGNATURE_MISSING -> "signature: there is none";
      case SIGNATURE_WRONG ->
          "signature: it is not of this seal, or not by key " + sealFinding.about();
      case SIGNATURE_BY_ANOTHER_KEY ->
          "signature: by key " + sealFinding.about() + ", which is not the key given";
      case SIGNATURE_BY_A_KEY_NOT_GIVEN ->
          "signature: good, by key "
              + sealFinding.about()
              + "; with --key it is held against yours";
      case NOT_SIGNED -> "signature: the seal is not signed, so anyone may have made it";
      case SEAL_OF_ANOTHER_RECORD ->
          "the seal is of " + sealFinding.about() + ", not of " + sealFinding.detail();
      case RECORD_SAME -> "record " + sealFinding.about();
      case RECORD_OTHER_BYTES -> otherBytes("record " + sealFinding.about());
      case RECORD_UNREADABLE -> unreadable("record " + sealFinding.about(), sealFinding);
      case DIGEST_SAME -> "content digest";
      case DIGEST_NOT_SHOWN -> "content digest: the record shows none";
      case DIGEST_OTHER -> "content digest: the record shows another than the seal";
      case INPUT_SAME -> "input " + sealFinding.about();
      case INPUT_OTHER_BYTES -> otherBytes("input " + sealFinding.about());
      case INPUT_MISSING -> missing("input " + sealFinding.about());
      case INPUT_UNREADABLE -> unreadable("input " + sealFinding.about(), sealFinding);
      case EARLIER_SAME -> "earlier record " + sealFinding.about();
      case EARLIER_OTHER_BYTES -> otherBytes("earlier record " + sealFinding.about());
      case EARLIER_MISSING -> missing("earlier record " + sealFinding.about());
      case EARLIER_UNREADABLE -> unreadable("earlier record " + sealFinding.about(), sealFinding);
    };
  }

  private static String otherBytes(String what) {
    return what + ": its bytes are others than were sealed";
  }

  private static String missing(String what) {
    return what + ": it is not there";
  }

  private static String unreadable(String what, SealFinding sealFinding) {
    return what + " can't be read: " + sealFinding.detail();
  }
}
