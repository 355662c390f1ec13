package leadlight.quality;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;

/** What other libraries make of the same data: src/test/resources/quality/outside.json. */
public final class Outside {

  public static final Path FOLDER = Path.of("src/test/resources/quality");

  private static final JsonNode FIGURES = read();

  private Outside() {}

  private static JsonNode read() {
    try {
      return new ObjectMapper().readTree(FOLDER.resolve("outside.json").toFile());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static double figure(String name) {
    return node(name).doubleValue();
  }

  public static double figure(String name, int index) {
    return node(name).get(index).doubleValue();
  }

  private static JsonNode node(String name) {
    JsonNode node = FIGURES.get(name);
    if (node == null) {
      throw new IllegalArgumentException("outside.json has no \"" + name + "\"");
    }
    return node;
  }
}
