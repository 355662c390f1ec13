package leadlight.reader;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import leadlight.model.Question;
import leadlight.model.joint.Chances;
import leadlight.model.joint.Reading;
import leadlight.model.picture.Region;
import leadlight.model.picture.RowPictures;

/**
 * Reads the joints of a row with three small networks that learned from rendered scenes. One looks
 * at each joint alone; the second weighs what the first saw of the joint with what it saw of the
 * whole row, and gives the chances of faults; rows bad throughout were among those that it learned
 * from. The third looks at the joint beside the row's typical one: it may make a call of the second
 * a doubt ({@link TwoNets}) and says how unlike the joint is to all that they learned from. The
 * first also says whether the photo looks like those on which their opinion was shown to hold. The
 * same pictures always give the same reading.
 */
public final class SecondReader {

  /** The networks learned from bytes less 128 over 64: models/reader/net.py. */
  private static final int GREY = 128;

  private static final float RANGE = 64;

  private final ReadingNet alone;
  private final ReadingNet inRow;
  private final ReadingNet beside;
  private final TwoNets rule = TwoNets.builtIn();

  private SecondReader() {
    this.alone = ReadingNet.builtIn(ReaderFile.ALONE);
    this.inRow = ReadingNet.builtIn(ReaderFile.IN_ROW);
    this.beside = ReadingNet.builtIn(ReaderFile.BESIDE);
  }

  /**
   * The reader that the program carries; loaded once.
   *
   * @throws IllegalStateException if a network and its description do not belong together
   */
  public static SecondReader builtIn() {
    return Holder.READER;
  }

  private static final class Holder {
    static final SecondReader READER = new SecondReader();
  }

  /**
   * Which networks the program carries: the begins of their hashes. They are not loaded for this.
   */
  public static String version() {
    return ReaderFile.builtIn(ReaderFile.ALONE).sha256().substring(0, 4)
        + ReaderFile.builtIn(ReaderFile.IN_ROW).sha256().substring(0, 4)
        + ReaderFile.builtIn(ReaderFile.BESIDE).sha256().substring(0, 4);
  }

  /**
   * A read row.
   *
   * @param joints the joints, pin 1 first
   * @param unfamiliar 0 if the photo looks like those on which telling soldered from set down was
   *     shown to work, to 1 if it looks like none of them: mean over the joints
   */
  public record ReadRow(List<Reading> joints, double unfamiliar) {

    /** Copies the list. */
    public ReadRow {
      joints = List.copyOf(joints);
    }
  }

  /** Reads all joints of a row. */
  public ReadRow read(RowPictures row) {
    float[] shown = shown(row);
    float[][] byAlone = alone.scores(shown, row);
    float[][] byBeside = beside.scores(shown, row);
    float[][] byRow = inRow.scores(InRow.shown(byAlone, alone.file().scores().size()));
    List<Chances> chances = rule.both(inRow.chances(byRow), beside.chances(byBeside));
    int each = shown.length / byAlone.length;
    List<Reading> readings = new ArrayList<>();
    for (int i = 0; i < byAlone.length; i++) {
      float[] own = Arrays.copyOfRange(shown, i * each, (i + 1) * each);
      readings.add(reading(byAlone[i], byBeside[i], chances.get(i), own, row));
    }
    double unfamiliar =
        Arrays.stream(byAlone).mapToDouble(alone.file()::photographed).average().orElseThrow();
    return new ReadRow(readings, unfamiliar);
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
    return Arrays.stream(beside.scores(shown(row), row))
        .map(
            score ->
                new Glance(
                    beside.file().strangeness(score),
                    beside.file().chances(score).of(Question.MISSING)))
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

  private static int put(byte[] picture, float[] to, int from) {
    int at = from;
    for (byte level : picture) {
      to[at++] = ((level & 0xff) - GREY) / RANGE;
    }
    return at;
  }

  private Reading reading(
      float[] byAlone, float[] byBeside, Chances chances, float[] shown, RowPictures row) {
    double strangeness = beside.file().strangeness(byBeside);
    return new Reading(
        chances,
        strangeness,
        strangeness > beside.file().unlikeFrom(),
        Call.strongest(chances)
            .flatMap(
                call -> {
                  int place = alone.file().place(call);
                  return new Covering(row)
                      .strongest(
                          shown,
                          byAlone[place],
                          pictures -> column(alone.scores(pictures, row), place));
                })
            .map(part -> inPitches(part, row)));
  }

  private static double[] column(float[][] scores, int column) {
    return IntStream.range(0, scores.length).mapToDouble(i -> scores[i][column]).toArray();
  }

  private static Region inPitches(Covering.Part part, RowPictures row) {
    double scale = row.pixelsPerPitch();
    return new Region(
        row.xFromPitch() + part.x() / scale,
        row.yFromPitch() + part.y() / scale,
        row.xFromPitch() + (part.x() + part.width()) / scale,
        row.yFromPitch() + (part.y() + part.height()) / scale);
  }

  /** The faults that the reader calls. */
  private static final class Call {

    /**
     * Open is one name of unwetted, no fault of its own; a quarter of overhang is part of the half.
     */
    private static final List<Question> FAULTS =
        List.of(
            Question.MISSING,
            Question.UNWETTED,
            Question.EXCESS,
            Question.BRIDGE_BEFORE,
            Question.BRIDGE_AFTER,
            Question.BALL,
            Question.OVER_HALF);

    private Call() {}

    /** The likeliest fault, if one is likelier than not. */
    static Optional<Question> strongest(Chances chances) {
      return FAULTS.stream()
          .max(Comparator.comparingDouble(chances::of))
          .filter(fault -> chances.of(fault) >= 0.5);
    }
  }
}
