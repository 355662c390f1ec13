package leadlight.data;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.exc.InvalidFormatException;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import com.fasterxml.jackson.databind.exc.ValueInstantiationException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;
import leadlight.model.UserError;

/**
 * A JSON data file: one of {@code models/}, which the build packs into the program, or a user's
 * own.
 *
 * <p>Names in files are snake_case ({@code pitchMm} reads {@code pitch_mm}), enum constants
 * kebab-case. Reading is strict: an unknown, repeated or missing name, a value of the wrong kind
 * and anything that the record's own constructor refuses end in one line with file, line and
 * column. {@code Optional} components may be absent; mark the others {@code @JsonProperty(required
 * = true)}.
 */
public final class DataFile {

  private static final String ROOT = "/models/";

  private final String name;
  private final byte[] content;

  private DataFile(String name, byte[] content) {
    this.name = name;
    this.content = content;
  }

  /**
   * A file of {@code models/}.
   *
   * @param path below {@code models/}, with slashes, as "acceptance/ipc-a-610.json"
   * @throws IllegalArgumentException if the program carries no such file: a fault of ours
   */
  public static DataFile builtIn(String path) {
    return new DataFile("models/" + path, builtInBytes(path));
  }

  /**
   * The bytes of a file of {@code models/}, for what is no text.
   *
   * @param path as for {@link #builtIn}
   */
  public static byte[] builtInBytes(String path) {
    try (InputStream in = DataFile.class.getResourceAsStream(ROOT + path)) {
      if (in == null) {
        throw new IllegalArgumentException("no built-in data file models/" + path);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /**
   * A file of the user's own.
   *
   * @throws UserError if it cannot be read
   */
  public static DataFile at(String file) {
    try {
      return at(Path.of(file));
    } catch (InvalidPathException e) {
      throw new UserError("no path: " + file);
    }
  }

  /**
   * The file at a path.
   *
   * @throws UserError if there is none, or it is a folder
   */
  public static DataFile at(Path file) {
    if (Files.isDirectory(file)) {
      throw new UserError(file + " is a folder; name a JSON file in it");
    }
    if (!Files.exists(file)) {
      throw new UserError(file + " does not exist; check the path");
    }
    try {
      return new DataFile(file.toString(), Files.readAllBytes(file));
    } catch (IOException e) {
      throw new UserError(file + " cannot be read; check its permissions");
    }
  }

  /** How messages name the file. */
  String name() {
    return name;
  }

  /** The file's text. */
  public String text() {
    return new String(content, UTF_8);
  }

  /** Hash of the file's bytes, lower-case hex. */
  public String sha256() {
    return Hash.sha256(content);
  }

  /**
   * The file as a record tree.
   *
   * @throws UserError if the file does not fit, with line and column
   */
  public <T> T read(Class<T> type) {
    try {
      T tree = Json.MAPPER.readValue(content, type);
      if (tree == null) {
        throw new UserError(name + " holds null; give it the content that its kind asks for");
      }
      return tree;
    } catch (JacksonException e) {
      throw new UserError(name + ", " + JsonTrouble.describe(e));
    } catch (IOException e) {
      // The bytes are here already: what is left to fail is their reading as characters.
      throw new UserError(name + " is no UTF-8 text; save it as UTF-8");
    }
  }

  /**
   * Writes a record tree as JSON that {@link #read} takes back; written aside and renamed, so that
   * nothing half-written is ever seen.
   *
   * @throws UserError if the place cannot be written
   */
  public static void write(Path file, Object tree) {
    try {
      WholeFile.write(file, (Json.WRITER.writeValueAsString(tree) + "\n").getBytes(UTF_8));
    } catch (JsonProcessingException e) {
      throw new IllegalArgumentException("not a record tree", e);
    }
  }

  /** Jackson's complaints in one line for people: place, path in the file, what is wrong. */
  private static final class JsonTrouble {

    private JsonTrouble() {}

    static String describe(JacksonException e) {
      JsonLocation at = e.getLocation();
      String place =
          at == null ? "" : "line " + at.getLineNr() + " column " + at.getColumnNr() + ": ";
      return place + path(e) + what(e);
    }

    private static String path(JacksonException e) {
      if (!(e instanceof JsonMappingException mapping) || mapping.getPath().isEmpty()) {
        return "";
      }
      String path =
          mapping.getPath().stream()
              .map(
                  r -> r.getFieldName() == null ? "[" + r.getIndex() + "]" : "." + r.getFieldName())
              .collect(Collectors.joining());
      return path.substring(path.startsWith(".") ? 1 : 0) + ": ";
    }

    private static String what(JacksonException e) {
      if (e instanceof UnrecognizedPropertyException unknown) {
        return "unknown name; known here are "
            + unknown.getKnownPropertyIds().stream()
                .map(String::valueOf)
                .sorted()
                .collect(Collectors.joining(", "));
      }
      if (e instanceof InvalidFormatException format) {
        return "\"" + format.getValue() + "\" does not fit" + choices(format);
      }
      if (e instanceof ValueInstantiationException refused && refused.getCause() != null) {
        return refused.getCause().getMessage();
      }
      return e.getOriginalMessage()
          .lines()
          .findFirst()
          .orElse("not valid JSON")
          .replaceAll("`(?:[\\w$]+[.$])*(\\w+)(?:<[^`]*>)?`", "$1")
          .replaceAll(" \\((?:but might|class |for Object).*", "")
          .replaceAll("Cannot coerce (\\w+) value (.*) to (\\w+) value", "$1 $2 where $3 is needed")
          .replace("creator property", "name")
          .replaceAll(" \\(index \\d+\\)", "");
    }

    private static String choices(InvalidFormatException e) {
      Class<?> type = e.getTargetType();
      if (type == null || !type.isEnum()) {
        return ", " + (type == null ? "another value" : type.getSimpleName()) + " is needed";
      }
      String names =
          Arrays.stream(type.getEnumConstants())
              .map(c -> ((Enum<?>) c).name().toLowerCase(Locale.ROOT).replace('_', '-'))
              .collect(Collectors.joining(", "));
      return "; one of " + names + " is needed";
    }
  }
}
