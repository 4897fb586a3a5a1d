package dev.ringout.sheet;

/**
 * A drawing below the table of a sheet, as large as it is.
 *
 * @param base64 its bytes (PNG; RFC 4648)
 * @param shows what is to be seen, for who can't see it
 */
public record OutDrawing(String base64, double widthMm, double heightMm, String shows) {}
