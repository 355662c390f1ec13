package leadlight.data;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.databind.JsonMappingException;
import com.fasterxml.jackson.databind.exc.InvalidFormatException;
import com.fasterxml.jackson.databind.exc.UnrecognizedPropertyException;
import com.fasterxml.jackson.databind.exc.ValueInstantiationException;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.Collectors;

/** Jackson's complaints in one line for people: place, path in the file, what is wrong. */
final class JsonTrouble {

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
            .map(r -> r.getFieldName() == null ? "[" + r.getIndex() + "]" : "." + r.getFieldName())
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
