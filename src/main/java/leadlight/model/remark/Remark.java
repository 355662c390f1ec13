package leadlight.model.remark;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import leadlight.model.FindingKind;

/**
 * Something that is to be said to a person: a code with its arguments, never a sentence. {@code
 * leadlight.text} makes sentences of it, in each language; files carry code and sentence. Each
 * implementation is a record: its name is the code, its components are the arguments, with their
 * units in their names.
 */
public sealed interface Remark permits Doubt, Note {

  /** The code, as "too-few-pixels" of {@code TooFewPixels}: the name in files and word lists. */
  default String code() {
    return codeOf(getClass());
  }

  /** The code of a kind of remark. */
  static String codeOf(Class<? extends Remark> kind) {
    return kebab(kind.getSimpleName());
  }

  /** The kinds of remark below one, each a record; of a record itself. */
  static List<Class<? extends Remark>> kinds(Class<?> type) {
    if (type.isRecord()) {
      return List.of(type.asSubclass(Remark.class));
    }
    List<Class<? extends Remark>> kinds = new ArrayList<>();
    for (Class<?> kind : type.getPermittedSubclasses()) {
      kinds.addAll(kinds(kind));
    }
    return kinds;
  }

  /**
   * The arguments by their names in files ("blur_pitch"), in their order; what is not known is left
   * out. Values are numbers, truth values and texts; a finding is its id.
   */
  default Map<String, Object> args() {
    Map<String, Object> args = new LinkedHashMap<>();
    for (RecordComponent component : getClass().getRecordComponents()) {
      Object value = value(component);
      if (!(value instanceof OptionalDouble given)) {
        args.put(snake(component.getName()), value instanceof FindingKind k ? k.id() : value);
      } else if (given.isPresent()) {
        args.put(snake(component.getName()), given.getAsDouble());
      }
    }
    return Collections.unmodifiableMap(args);
  }

  /** What it is about: remarks of one topic differ in their numbers and pins alone. */
  default String topic() {
    Object kind = args().get("kind");
    return kind == null ? code() : code() + " " + kind;
  }

  private Object value(RecordComponent component) {
    try {
      return component.getAccessor().invoke(this);
    } catch (IllegalAccessException | InvocationTargetException e) {
      throw new IllegalStateException(component + " of " + this + " cannot be read", e);
    }
  }

  /** As "blur_pitch" of "blurPitch": the name of an argument in files. */
  static String snake(String name) {
    return name.replaceAll("([a-z0-9])([A-Z])", "$1_$2").toLowerCase(Locale.ROOT);
  }

  private static String kebab(String name) {
    return snake(name).replace('_', '-');
  }
}
