package dev.ringout.sheet;

/**
 * A picture in a cell of a sheet to be written.
 *
 * @param row of the rows below the headings, from 0
 * @param column from 0
 * @param base64 its bytes (JPEG; RFC 4648)
 * @param width in pixels
 * @param height in pixels
 * @param shows what is to be seen, for who can't see it
 */
public record OutPicture(int row, int column, String base64, int width, int height, String shows) {}
