package leadlight.leg.read;

import java.util.Arrays;
import java.util.List;
import leadlight.data.DataFile;
import leadlight.data.Hash;
import leadlight.leg.find.FoundLeg;
import leadlight.numeric.Logistic;
import leadlight.vision.Frame;
import leadlight.vision.Network;

/**
 * Reads how far solder meets a leg and covers its land, by the network of {@code
 * models/legs/reader.onnx}. Safe for threads.
 */
public final class LegReader {

  private static final double ROUND_DEG = 360;

  private final LegReaderFile file = LegReaderFile.builtIn();
  private final Network network;

  private LegReader() {
    byte[] onnx = DataFile.builtInBytes("legs/reader.onnx");
    if (!Hash.sha256(onnx).equals(file.sha256())) {
      throw new IllegalStateException(
          "the network of models/legs is not the one that its .json describes; build again");
    }
    this.network = new Network(onnx);
  }

  /**
   * The reader of the network that the program carries, loaded once: what is native of it lives as
   * long as the program.
   *
   * @throws IllegalStateException if the network is not the one that its description names
   */
  public static LegReader builtIn() {
    return Held.READER;
  }

  private static final class Held {
    static final LegReader READER = new LegReader();
  }

  /**
   * What is read of one leg.
   *
   * @param wetted of the leg's outline, degrees of 360 seen from the hole's middle
   * @param covered of the land, a share
   * @param open of the hole, a share
   * @param componentSide how likely the photo shows the component side, 0 to 1
   * @param burntOut share of the land, hole included, that is burnt out
   */
  public record Reading(
      Reach wetted, Reach covered, Reach open, double componentSide, double burntOut) {}

  /** Reads a leg in its photo. */
  public Reading read(Frame frame, FoundLeg leg) {
    byte[] levels = LegPicture.of(frame, leg);
    float[] shown = new float[levels.length];
    for (int i = 0; i < shown.length; i++) {
      shown[i] = levels[i] & 0xff;
    }
    float[] scores =
        network.run(shown, 1, LegPicture.PLANES, LegPicture.HEIGHT, LegPicture.WIDTH)[0];
    List<Double> degrees = file.degrees();
    List<Double> shares = file.shares();
    int covered = degrees.size();
    int open = covered + shares.size();
    int side = open + shares.size();
    return new Reading(
        Reach.of(degrees, Arrays.copyOfRange(scores, 0, covered), file.wetted(), ROUND_DEG),
        Reach.of(shares, Arrays.copyOfRange(scores, covered, open), file.covered(), 1),
        Reach.of(shares, Arrays.copyOfRange(scores, open, side), file.open(), 1),
        Logistic.of(file.component().slope() * scores[side] + file.component().shift()),
        LegPicture.burntOut(levels, file.fullFrom()));
  }
}
