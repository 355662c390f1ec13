package leadlight.vision.decode;

import java.io.BufferedInputStream;
import java.io.BufferedOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.EOFException;
import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.util.Optional;
import leadlight.vision.Frame;
import leadlight.vision.Threads;
import leadlight.vision.decode.Codec.Decoded;
import org.opencv.core.Mat;

/**
 * What runs apart for {@link ApartDecoder}: takes pictures from its input (the way, the length, the
 * bytes) and gives pixels ({@link #ANSWER}, rows, columns, significant bits, rows of blue, green,
 * red; 0 rows of what is no picture) until its input ends. It opens no file of the user's.
 */
final class DecodeProcess {

  /** Begins each answer: "leadligh" in ASCII, which no message of a failing process begins with. */
  static final long ANSWER = 0x6c6561646c696768L;

  private DecodeProcess() {}

  public static void main(String[] args) throws IOException {
    Threads.set(1);
    try (DataInputStream in =
            new DataInputStream(
                new BufferedInputStream(new FileInputStream(FileDescriptor.in), 1 << 16));
        DataOutputStream out =
            new DataOutputStream(
                new BufferedOutputStream(new FileOutputStream(FileDescriptor.out), 1 << 16))) {
      while (true) {
        serve(in, out);
        out.flush();
      }
    } catch (EOFException e) {
      // Whoever asked has ended.
      return;
    }
  }

  private static void serve(DataInputStream in, DataOutputStream out) throws IOException {
    ApartDecoder.Way way = ApartDecoder.Way.values()[in.readByte()];
    Optional<Decoded> decoded;
    try (EncodedPicture picture = EncodedPicture.readFrom(in)) {
      decoded = way.here(picture);
    }
    out.writeLong(ANSWER);
    if (decoded.isEmpty()) {
      out.writeInt(0);
      return;
    }
    try (Frame frame = decoded.get().frame()) {
      write(frame.mat(), decoded.get().significantBits(), out);
    }
  }

  private static void write(Mat mat, int bits, DataOutputStream out) throws IOException {
    out.writeInt(mat.rows());
    out.writeInt(mat.cols());
    out.writeInt(bits);
    byte[] row = new byte[mat.cols() * 3];
    for (int y = 0; y < mat.rows(); y++) {
      mat.get(y, 0, row);
      out.write(row);
    }
  }
}
