package leadlight.photo;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import leadlight.vision.Frame;
import leadlight.vision.decode.Codec;

/** The pictures of {@code src/test/resources/photo}; its README says what is special. */
public final class Samples {

  private Samples() {}

  public static Path path(String name) {
    try {
      return Path.of(Samples.class.getResource("/photo/" + name).toURI());
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  public static byte[] bytes(String name) throws IOException {
    return Files.readAllBytes(path(name));
  }

  public static byte[] rgb(String name) throws IOException {
    try (Frame frame = Codec.decode(bytes(name)).orElseThrow()) {
      return frame.rgb();
    }
  }

  /** Mean absolute difference of two pictures' bytes, in grey levels. */
  static double meanDifference(byte[] a, byte[] b) {
    if (a.length != b.length) {
      throw new IllegalArgumentException(a.length + " against " + b.length + " bytes");
    }
    long sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += Math.abs((a[i] & 0xff) - (b[i] & 0xff));
    }
    return sum / (double) a.length;
  }
}
