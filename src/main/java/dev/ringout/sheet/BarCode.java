package dev.ringout.sheet;

/** The bar codes of open standards that a label may carry. */
public enum BarCode {
  /** ISO/IEC 15417: ASCII only. */
  CODE128,
  /** ISO/IEC 18004. */
  QR
}
