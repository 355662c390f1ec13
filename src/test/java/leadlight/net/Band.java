package leadlight.net;

import java.util.List;

/**
 * What one figure of one kind of picture may be.
 *
 * @param kind of picture
 * @param figure as {@link Catch#figures()}
 * @param least of it
 * @param most of it
 * @param why what a figure outside would mean
 */
record Band(String kind, String figure, double least, double most, String why) {

  static List<Band> all() {
    return NetPicture.lines("bands.csv").stream().map(Band::of).toList();
  }

  private static Band of(String line) {
    String[] cells = line.split(",", 5);
    return new Band(
        cells[0], cells[1], Double.parseDouble(cells[2]), Double.parseDouble(cells[3]), cells[4]);
  }

  @Override
  public String toString() {
    return kind + ": " + figure + " from " + least + " to " + most;
  }
}
