package leadlight.vision.decode;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import leadlight.vision.MatScope;
import leadlight.vision.load.NativeLibrary;
import org.opencv.core.CvType;
import org.opencv.core.Mat;

/**
 * The bytes of a picture file in native memory, so that a large file costs its size once and gives
 * it back when closed, not when the collector comes by.
 */
public final class EncodedPicture implements AutoCloseable {

  private static final int CHUNK = 1 << 16;

  private final Mat bytes;

  /**
   * Room for a whole file.
   *
   * @param size bytes, at least 1
   */
  public EncodedPicture(int size) {
    if (size < 1) {
      throw new IllegalArgumentException("size must be at least 1, is " + size);
    }
    NativeLibrary.load();
    bytes = new Mat(1, size, CvType.CV_8UC1);
  }

  /** A copy of a file's bytes. */
  public static EncodedPicture of(byte[] file) {
    EncodedPicture picture = new EncodedPicture(file.length);
    picture.put(0, file, file.length);
    return picture;
  }

  /** Copies the first {@code length} bytes of {@code chunk} to {@code offset}. */
  public void put(int offset, byte[] chunk, int length) {
    if (offset < 0 || length < 0 || length > chunk.length || length > bytes.cols() - offset) {
      throw new IllegalArgumentException(
          length + " bytes at " + offset + " do not fit into " + bytes.cols());
    }
    bytes.put(0, offset, chunk, 0, length);
  }

  /** Writes the length, then the bytes. */
  void writeTo(DataOutputStream out) throws IOException {
    out.writeInt(bytes.cols());
    byte[] chunk = new byte[CHUNK];
    for (int at = 0; at < bytes.cols(); at += CHUNK) {
      out.write(chunk, 0, bytes.get(0, at, chunk));
    }
  }

  /** Reads what {@link #writeTo} wrote. */
  static EncodedPicture readFrom(DataInputStream in) throws IOException {
    EncodedPicture picture = new EncodedPicture(in.readInt());
    byte[] chunk = new byte[CHUNK];
    for (int at = 0; at < picture.bytes.cols(); at += CHUNK) {
      int length = Math.min(CHUNK, picture.bytes.cols() - at);
      in.readFully(chunk, 0, length);
      picture.put(at, chunk, length);
    }
    return picture;
  }

  /** The native bytes, for this package alone. */
  Mat bytes() {
    return bytes;
  }

  @Override
  public void close() {
    MatScope.release(bytes);
  }
}
