package leadlight.quality;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;

/** What R makes of the same data: src/test/resources/quality/outside-r.json, by outside.R. */
public final class OutsideR {

  private static final JsonNode FIGURES = read();

  private OutsideR() {}

  private static JsonNode read() {
    try {
      return new ObjectMapper().readTree(Outside.FOLDER.resolve("outside-r.json").toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** A single figure. */
  public static double figure(String name) {
    return FIGURES.required(name).doubleValue();
  }

  /** A figure of a row of them. */
  public static double figure(String name, int index) {
    return FIGURES.required(name).required(index).doubleValue();
  }
}
