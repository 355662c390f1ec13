package leadlight.photo.jpeg;

/** The bytes of a file by their place. */
public interface Bytes {

  /**
   * Fills {@code into} from {@code offset} on, as far as the file goes.
   *
   * @return the number of bytes filled; 0 at the end of the file and beyond
   */
  int read(long offset, byte[] into);
}
