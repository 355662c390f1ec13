package leadlight.data;

import com.fasterxml.jackson.core.JsonProcessingException;

/** Record trees as one line of JSON, named and read as in {@link DataFile}. */
public final class JsonText {

  private JsonText() {}

  /** The tree on one line; the same tree gives the same text. */
  public static String of(Object tree) {
    try {
      return Json.MAPPER.writeValueAsString(tree);
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("not a record tree", e);
    }
  }

  /**
   * What {@link #of} wrote.
   *
   * @throws IllegalArgumentException if the text does not fit
   */
  public static <T> T read(String text, Class<T> type) {
    try {
      T tree = Json.MAPPER.readValue(text, type);
      if (tree == null) {
        throw new IllegalArgumentException("no " + type.getSimpleName() + ": null");
      }
      return tree;
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("no " + type.getSimpleName() + ": " + text, e);
    }
  }
}
