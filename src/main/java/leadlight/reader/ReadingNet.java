package leadlight.reader;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import leadlight.data.DataFile;
import leadlight.data.Hash;
import leadlight.model.Question;
import leadlight.model.joint.Chances;
import leadlight.model.picture.RowPictures;
import leadlight.vision.Network;

/** One trained network with what belongs to it. */
final class ReadingNet {

  private final ReaderFile file;
  private final Network network;

  /**
   * Takes a network and its description.
   *
   * @throws IllegalStateException if they do not belong together
   */
  ReadingNet(ReaderFile file, byte[] onnx) {
    if (!Hash.sha256(onnx).equals(file.sha256())) {
      throw new IllegalStateException(
          "a network of models/reader is not the one that its .json describes; build again");
    }
    this.file = file;
    this.network = new Network(onnx);
  }

  /** A network that the program carries, by its name in {@code models/reader}. */
  static ReadingNet builtIn(String name) {
    return new ReadingNet(
        ReaderFile.builtIn(name), DataFile.builtInBytes("reader/" + name + ".onnx"));
  }

  ReaderFile file() {
    return file;
  }

  /** The scores of joints, or of such with parts covered, one line each. */
  float[][] scores(float[] shown, RowPictures row) {
    int count = shown.length / (2 * row.typical().length);
    return network.run(shown, count, 2 * RowPictures.PLANES, row.height(), row.width());
  }

  /** The scores of joints of which another network's view is shown, one line each. */
  float[][] scores(float[][] shown) {
    int length = shown[0].length;
    float[] lines = new float[shown.length * length];
    for (int i = 0; i < shown.length; i++) {
      System.arraycopy(shown[i], 0, lines, i * length, length);
    }
    return network.run(lines, shown.length, length);
  }

  /**
   * The chances of a row's joints. A gap is seen in the pictures of both its joints; the greater of
   * the two chances counts for both: a bridge missed is worse than one looked at in vain (on 560
   * scenes not learned from it leaves 8 of 274 bridges below a chance of 0.15 instead of 12).
   */
  List<Chances> chances(float[][] scores) {
    List<Chances> own = Arrays.stream(scores).map(file::chances).toList();
    List<Chances> joined = new ArrayList<>();
    for (int i = 0; i < own.size(); i++) {
      Chances it = own.get(i);
      double before = i == 0 ? 0 : own.get(i - 1).of(Question.BRIDGE_AFTER);
      double after = i == own.size() - 1 ? 0 : own.get(i + 1).of(Question.BRIDGE_BEFORE);
      joined.add(
          it.with(Question.BRIDGE_BEFORE, Math.max(before, it.of(Question.BRIDGE_BEFORE)))
              .with(Question.BRIDGE_AFTER, Math.max(after, it.of(Question.BRIDGE_AFTER))));
    }
    return joined;
  }
}
