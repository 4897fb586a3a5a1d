package dev.ringout.words;

import dev.ringout.seal.SealFinding;
import dev.ringout.seal.SealFinding.State;
import dev.ringout.source.OptionNames;
import dev.ringout.units.Text;

/** What looking at a sealed record showed, in words. */
public final class SealSentences {
  private SealSentences() {}

  /** How a thing stands to what was sealed, in one or two words. */
  public static String state(State state) {
    return switch (state) {
      case AS_SEALED -> "as sealed";
      case DIFFERS -> "DIFFERS";
      case NOT_SHOWN -> "not shown";
      case NOTE -> "note";
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
    return Text.visible(said(sealFinding));
  }

  private static String said(SealFinding sealFinding) {
    return switch (sealFinding.kind()) {
      case SIGNATURE_GOOD -> "signature by key " + sealFinding.about();
      case SIGNATURE_MISSING -> "signature: there is none";
      case SIGNATURE_WRONG ->
          "signature: it is not of this seal, or not by key " + sealFinding.about();
      case SIGNATURE_BY_ANOTHER_KEY ->
          "signature: by key " + sealFinding.about() + ", which is not the key given";
      case SIGNATURE_BY_A_KEY_NOT_GIVEN ->
          "signature: good, by key " + sealFinding.about() + "; signer not checked, give --key";
      case NOT_SIGNED -> "signature: the seal is not signed, so anyone may have made it";
      case KEY_LISTED -> key(sealFinding);
      case KEY_WITHDRAWN_SINCE ->
          key(sealFinding) + ": good at its time, if the time that the signer wrote is true";
      case KEY_WITHDRAWN_BEFORE -> key(sealFinding) + ": signed after that";
      case KEY_NOT_YET -> key(sealFinding) + ": signed before the key counts";
      case KEY_NO_LONGER -> key(sealFinding) + ": signed after its last day";
      case KEY_AT_NO_TIME ->
          key(sealFinding) + ": the seal does not say when it was signed, the key not for ever";
      case KEY_NOT_LISTED -> key(sealFinding) + ": signer not known, not in the list of keys";
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
      case INPUT_ELSEWHERE ->
          "input "
              + sealFinding.about()
              + ": it does not lie beside the record and was not looked at; "
              + OptionNames.INPUTS
              + " FOLDER names the folder in which it may be";
      case INPUT_ADDED ->
          "input "
              + sealFinding.about()
              + ": it was not there when the others of its folder were sealed";
      case INPUT_UNREADABLE -> unreadable("input " + sealFinding.about(), sealFinding);
      case KEPT_SAME -> inStore(sealFinding);
      case KEPT_OTHER_BYTES -> otherBytes(inStore(sealFinding));
      case KEPT_OTHER_FILES ->
          inStore(sealFinding) + ": its files, or their order, changed since it was sealed";
      case KEPT_OTHER_ENTRIES -> inStore(sealFinding) + ": its entries changed since it was sealed";
      case KEPT_NOT_AS_WRITTEN -> inStore(sealFinding) + ": " + sealFinding.detail();
      case KEPT_GONE -> inStore(sealFinding) + ": it is not there any more";
      case KEPT_NOT_FOUND -> inStore(sealFinding) + ": not found: " + sealFinding.detail();
      case KEPT_NO_SUCH_LIST ->
          inStore(sealFinding) + ": there is no such list in " + sealFinding.detail();
      case KEPT_NO_SUCH_UNIT ->
          inStore(sealFinding) + ": there is no such unit of this list in " + sealFinding.detail();
      case KEPT_TESTS_SINCE -> addedSince(sealFinding, "test was", "tests were");
      case KEPT_ENTRIES_SINCE -> addedSince(sealFinding, "entry was", "entries were");
      case KEPT_WRONG_SINCE ->
          inStore(sealFinding) + ": behind what was sealed, " + sealFinding.detail();
      case EARLIER_SAME -> "earlier record " + sealFinding.about();
      case EARLIER_OTHER_BYTES -> otherBytes("earlier record " + sealFinding.about());
      case EARLIER_MISSING -> missing("earlier record " + sealFinding.about());
      case EARLIER_UNREADABLE -> unreadable("earlier record " + sealFinding.about(), sealFinding);
      case EARLIER_SEAL_SAME -> sealOf(sealFinding);
      case EARLIER_SEAL_OTHER_BYTES -> otherBytes(sealOf(sealFinding));
      case EARLIER_SEAL_MISSING -> missing(sealOf(sealFinding));
      case EARLIER_SEAL_UNUSABLE -> sealOf(sealFinding) + " is not a seal: " + sealFinding.detail();
      case EARLIER_SEAL_NOT_HELD ->
          sealOf(sealFinding) + ": this seal was made before seals held those before them";
      case EARLIER_SIGNATURE_GOOD -> sealOf(sealFinding) + ": signature " + byKey(sealFinding);
      case EARLIER_SIGNATURE_WRONG ->
          sealOf(sealFinding) + ": its signature is not of it, or not " + byKey(sealFinding);
      case EARLIER_SIGNATURE_BY_A_KEY_NOT_GIVEN ->
          sealOf(sealFinding)
              + ": signature good, "
              + byKey(sealFinding)
              + "; signer not checked, give --key";
      case EARLIER_SIGNATURE_MISSING ->
          sealOf(sealFinding) + ": it is not signed, and this one vouches for it";
      case EARLIER_NOT_SIGNED -> sealOf(sealFinding) + ": it is not signed";
      case HISTORY_SAME -> "history of " + sealFinding.about();
      case HISTORY_OTHER_RECORD ->
          sealOf(sealFinding) + " is of " + sealFinding.detail() + ", or of other bytes of it";
      case HISTORY_OTHER_VERDICT ->
          history(sealFinding) + "its own seal says " + sealFinding.detail();
      case HISTORY_OTHER_RECORDS_BEFORE ->
          history(sealFinding) + "its own seal names other records before it";
      case HISTORY_FAILED_VALUE_MISSING ->
          history(sealFinding) + sealFinding.detail() + " failed first, and is not kept";
      case HISTORY_OTHER_NOTES ->
          history(sealFinding) + "what was done before it is told otherwise";
      case CONTINUED ->
          sealFinding.detail() + " goes on from " + sealFinding.about() + ": the later one stands";
      case FORKED_BY_A_KEY_NOT_GIVEN ->
          sealFinding.detail()
              + " says that it goes on from "
              + sealFinding.about()
              + " too, signed by a key that is not given: with --key it counts as another history";
      case UNIT_ELSEWHERE ->
          sealFinding.about()
              + " is of the same unit, and this record neither follows it nor goes before"
              + " it";
      case FORKED ->
          sealFinding.detail()
              + " goes on from "
              + sealFinding.about()
              + " too: two histories, and nothing here tells which one stands";
    };
  }

  private static String addedSince(SealFinding sealFinding, String one, String many) {
    String count = sealFinding.detail();
    String added = count + " " + (count.equals("1") ? one : many) + " added";
    return inStore(sealFinding) + ": since then " + added;
  }

  private static String inStore(SealFinding sealFinding) {
    return "store: " + sealFinding.about();
  }

  private static String sealOf(SealFinding sealFinding) {
    return "seal of earlier record " + sealFinding.about();
  }

  private static String history(SealFinding sealFinding) {
    return "history of " + sealFinding.about() + ": ";
  }

  private static String byKey(SealFinding sealFinding) {
    return "by key " + sealFinding.detail();
  }

  private static String key(SealFinding sealFinding) {
    String facts = sealFinding.detail();
    return "key " + sealFinding.about() + (facts.isEmpty() ? "" : ": " + facts);
  }

  private static String otherBytes(String what) {
    return what + ": changed since it was sealed";
  }

  private static String missing(String what) {
    return what + ": it is not there";
  }

  private static String unreadable(String what, SealFinding sealFinding) {
    return what + " can't be read: " + sealFinding.detail();
  }
}
