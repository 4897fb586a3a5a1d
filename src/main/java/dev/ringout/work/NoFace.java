package dev.ringout.work;

/** Why there is no picture of a connector's face. */
public enum NoFace {
  /** The list places none of its cavities, and no table knows its arrangement. */
  IN_NO_TABLE,
  /** Nothing says whether it has pins or sockets, and one is the mirror image of the other. */
  PINS_OR_SOCKETS
}
