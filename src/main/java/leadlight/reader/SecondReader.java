package leadlight.reader;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import leadlight.data.DataFile;
import leadlight.data.Hash;
import leadlight.model.FaultChances;
import leadlight.model.Reading;
import leadlight.model.Region;
import leadlight.model.RowPictures;
import leadlight.vision.Network;

/**
 * Reads the joints of a row with a small network that learned from rendered scenes and a few
 * photographs. It is handed each joint beside the row's typical joint but looks at the joint alone,
 * so that a row bad throughout gets no credit for being alike. It says how likely each fault is,
 * how unlike the joint is to all that it learned from, and whether this looks like a photograph or
 * like what Leadlight draws. The same pictures always give the same reading.
 */
public final class SecondReader {

  /** The network learned from bytes less 128 over 64: models/reader/net.py. */
  private static final int GREY = 128;

  private static final float RANGE = 64;

  /** Place of the strangeness among the scores. */
  private static final int STRANGE = 6;

  private static final int PHOTOGRAPHED = 10;

  private final ReaderFile file;
  private final Network network;

  SecondReader(ReaderFile file, byte[] onnx) {
    if (!Hash.sha256(onnx).equals(file.sha256())) {
      throw new IllegalStateException(
          "models/reader/reader.onnx is not the network that reader.json describes; build again");
    }
    this.file = file;
    this.network = new Network(onnx);
  }

  /**
   * The reader that the program carries; loaded once.
   *
   * @throws IllegalStateException if network and description do not belong together
   */
  public static SecondReader builtIn() {
    return Holder.READER;
  }

  private static final class Holder {
    static final SecondReader READER =
        new SecondReader(ReaderFile.builtIn(), DataFile.builtIn("reader/reader.onnx").bytes());
  }

  /** Which network the program carries: the begin of its hash. It is not loaded for this. */
  public static String version() {
    return ReaderFile.builtIn().sha256().substring(0, 12);
  }

  /** Reads all joints of a row, pin 1 first. */
  public List<Reading> read(RowPictures row) {
    float[] shown = shown(row);
    float[][] scores = run(shown, row);
    int each = shown.length / scores.length;
    List<FaultChances> chances = gapsAsOne(scores);
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < scores.length; i++) {
      float[] own = Arrays.copyOfRange(shown, i * each, (i + 1) * each);
      readings.add(reading(scores[i], chances.get(i), own, row));
    }
    return readings;
  }

  /**
   * A gap is seen in the pictures of both its joints. The greater of the two chances counts for
   * both: a bridge missed is worse than one looked at in vain (on 560 scenes not learned from it
   * leaves 8 of 274 bridges below a chance of 0.15 instead of 12).
   */
  private List<FaultChances> gapsAsOne(float[][] scores) {
    List<FaultChances> own =
        Arrays.stream(scores).map(score -> file.scales().chances(score)).toList();
    List<FaultChances> joined = new ArrayList<>();
    for (int i = 0; i < own.size(); i++) {
      FaultChances it = own.get(i);
      double before = i == 0 ? 0 : own.get(i - 1).bridgeAfter();
      double after = i == own.size() - 1 ? 0 : own.get(i + 1).bridgeBefore();
      joined.add(
          new FaultChances(
              it.missing(),
              it.unwetted(),
              it.open(),
              it.excess(),
              Math.max(before, it.bridgeBefore()),
              Math.max(after, it.bridgeAfter()),
              it.ball(),
              it.overQuarter(),
              it.overHalf()));
    }
    return joined;
  }

  /**
   * A first look at a place.
   *
   * @param strangeness how unlike known joints, 0 to 1
   * @param missing chance that there is a land without a lead
   */
  public record Glance(double strangeness, double missing) {}

  /** A part of {@link #read}, cheaper: whether there are joints at all, pin 1 first. */
  public List<Glance> glance(RowPictures row) {
    return Arrays.stream(run(shown(row), row))
        .map(
            score ->
                new Glance(
                    ReaderFile.logistic(score[STRANGE]), file.scales().chances(score).missing()))
        .toList();
  }

  private static float[] shown(RowPictures row) {
    float[] shown = new float[row.joints().size() * 2 * row.typical().length];
    int at = 0;
    for (byte[] joint : row.joints()) {
      at = put(joint, shown, at);
      at = put(row.typical(), shown, at);
    }
    return shown;
  }

  private float[][] run(float[] shown, RowPictures row) {
    int count = shown.length / (2 * row.typical().length);
    return network.run(shown, count, 2 * RowPictures.PLANES, row.height(), row.width());
  }

  private static int put(byte[] picture, float[] to, int from) {
    int at = from;
    for (byte level : picture) {
      to[at++] = ((level & 0xff) - GREY) / RANGE;
    }
    return at;
  }

  private Reading reading(float[] score, FaultChances chances, float[] shown, RowPictures row) {
    double strangeness = ReaderFile.logistic(score[STRANGE]);
    return new Reading(
        chances,
        strangeness,
        strangeness > file.unlikeFrom(),
        OptionalDouble.of(file.scales().photographed().chance(score[PHOTOGRAPHED])),
        Call.strongest(chances)
            .flatMap(
                call ->
                    new Covering(row)
                        .strongest(
                            shown,
                            score[call.place()],
                            pictures -> column(run(pictures, row), call.place()))
                        .map(part -> inPitches(part, row))));
  }

  private static double[] column(float[][] scores, int column) {
    return Arrays.stream(scores).mapToDouble(line -> line[column]).toArray();
  }

  private static Region inPitches(Covering.Part part, RowPictures row) {
    double scale = row.pixelsPerPitch();
    return new Region(
        row.xFromPitch() + part.x() / scale,
        row.yFromPitch() + part.y() / scale,
        row.xFromPitch() + (part.x() + part.width()) / scale,
        row.yFromPitch() + (part.y() + part.height()) / scale);
  }
}
