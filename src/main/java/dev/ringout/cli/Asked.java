package dev.ringout.cli;

import dev.ringout.jobs.WrongRequest;
import dev.ringout.source.OptionNames;

/** Where on the command line a part of a request is asked for. */
final class Asked {
  private Asked() {}

  /** What is wrong with a request, behind the option that asks for it. */
  static String inWords(WrongRequest wrong) {
    return before(wrong.part()) + wrong.text();
  }

  /** The option, as it stands before what is wrong; empty where the words themselves say it. */
  static String before(WrongRequest.Part part) {
    return switch (part) {
      case ONLY -> "--only: ";
      case TOUCHED -> "--touched: ";
      case OPENED -> "--opened: ";
      case RENAME -> "--rename: ";
      case SLEEVE -> "--sleeve: ";
      case TABLES -> "--tables ";
      case STATE -> "--state: ";
      case WIRE -> "";
      case POINT -> "";
      case OTHERS -> OptionNames.ALSO + " ";
      case CELL -> "";
      case WHO -> "--who: ";
      case PERSON -> "";
      case SEAL_KEY -> "--seal: ";
      case TRUSTED_KEY -> "--key: ";
      case KEY_LIST -> "--keys: ";
      case IDS -> "--ids: ";
    };
  }
}
