package dev.ringout.sheet;

/**
 * A picture in a cell of a sheet to be written.
 *
 * @param row of the rows below the headings, from 0
 * @param column from 0
 * @param jpeg its bytes
 * @param width in pixels
 * @param height in pixels
 * @param shows what is to be seen, for who can't see it
 */
public record OutPicture(int row, int column, byte[] jpeg, int width, int height, String shows) {
  /** What is given can't be changed afterwards. */
  public OutPicture {
    jpeg = jpeg.clone();
  }

  @Override
  public byte[] jpeg() {
    return jpeg.clone();
  }
}
