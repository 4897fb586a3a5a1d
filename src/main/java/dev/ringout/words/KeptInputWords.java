package dev.ringout.words;

import dev.ringout.seal.KeptInput;
import dev.ringout.units.Text;

/** What an input of a record is called that is kept in a store. */
public final class KeptInputWords implements KeptInput.Cases<String> {
  private KeptInputWords() {}

  /** Its name. */
  public static String of(KeptInput input) {
    return Text.visible(input.match(new KeptInputWords()));
  }

  @Override
  public String listFile(KeptInput.ListFile input) {
    String file = input.list().equals(input.file()) ? "" : "/" + input.file();
    return "list " + input.list() + file;
  }

  @Override
  public String test(KeptInput.Test input) {
    return unit(input) + ", test " + input.number() + ", " + input.sheet();
  }

  /** The unit of a test. */
  public static String unit(KeptInput.Test input) {
    return "unit " + input.serialNumber();
  }
}
