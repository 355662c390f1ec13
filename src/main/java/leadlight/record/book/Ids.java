package leadlight.record.book;

import java.util.function.Function;

/** Constants by the names that tables use. */
public final class Ids {

  private Ids() {}

  /** The constant of that name; the tables' own checks keep other names out. */
  public static <E extends Enum<E>> E of(Class<E> type, Function<E, String> name, String id) {
    for (E constant : type.getEnumConstants()) {
      if (name.apply(constant).equals(id)) {
        return constant;
      }
    }
    throw new IllegalStateException(
        "the record speaks of an unknown " + type.getSimpleName() + " " + id);
  }
}
