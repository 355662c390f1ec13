package leadlight.reader;

import java.util.Arrays;

/**
 * What is shown of a joint in its row: what the network that looks at joints alone made of it (its
 * embedding, the columns behind its scores), the mean of the row's, and their spread. As {@code
 * in_row} of models/reader/net.py.
 */
final class InRow {

  /** Keeps the root of no spread at all steep nowhere: models/reader/net.py. */
  private static final double LEAST_VARIANCE = 1e-6;

  private InRow() {}

  /**
   * One line a joint, three times as long as an embedding.
   *
   * @param seen output of the first network, one line a joint
   * @param from column at which embeddings begin
   */
  static float[][] shown(float[][] seen, int from) {
    float[][] own =
        Arrays.stream(seen)
            .map(line -> Arrays.copyOfRange(line, from, line.length))
            .toArray(float[][]::new);
    int length = own[0].length;
    float[][] shown = new float[own.length][3 * length];
    for (int column = 0; column < length; column++) {
      double mean = 0;
      double square = 0;
      for (float[] line : own) {
        mean += line[column] / own.length;
      }
      for (float[] line : own) {
        square += (line[column] - mean) * (line[column] - mean) / own.length;
      }
      float spread = (float) Math.sqrt(square + LEAST_VARIANCE);
      for (int i = 0; i < own.length; i++) {
        shown[i][column] = own[i][column];
        shown[i][length + column] = (float) mean;
        shown[i][2 * length + column] = spread;
      }
    }
    return shown;
  }
}
