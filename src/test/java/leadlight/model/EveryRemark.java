package leadlight.model;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import leadlight.model.remark.Remark;

/** Samples of every kind of doubt and note, with each sort of argument that changes the words. */
public final class EveryRemark {

  private EveryRemark() {}

  /** The kinds, as records. */
  public static List<Class<? extends Remark>> kinds() {
    return Remark.kinds(Remark.class);
  }

  /** All samples of all kinds. */
  public static List<Remark> samples() {
    return kinds().stream().flatMap(kind -> samples(kind).stream()).toList();
  }

  /** One sample for each combination of values that change the words. */
  public static List<Remark> samples(Class<? extends Remark> kind) {
    List<List<Object>> rows = List.of(List.of());
    for (RecordComponent component : kind.getRecordComponents()) {
      List<List<Object>> longer = new ArrayList<>();
      for (List<Object> row : rows) {
        for (Object value : values(component)) {
          List<Object> more = new ArrayList<>(row);
          more.add(value);
          longer.add(more);
        }
      }
      rows = longer;
    }
    return rows.stream().map(row -> made(kind, row)).toList();
  }

  private static Remark made(Class<? extends Remark> kind, List<Object> values) {
    Class<?>[] types =
        Arrays.stream(kind.getRecordComponents())
            .map(RecordComponent::getType)
            .toArray(Class<?>[]::new);
    try {
      return kind.getDeclaredConstructor(types).newInstance(values.toArray());
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException(e);
    }
  }

  private static List<Object> values(RecordComponent component) {
    Class<?> type = component.getType();
    if (type == boolean.class) {
      return List.of(true, false);
    }
    if (type == OptionalDouble.class) {
      return List.of(OptionalDouble.empty(), OptionalDouble.of(0.4375));
    }
    if (type == FindingKind.class) {
      return List.of(FindingKind.values());
    }
    if (type == int.class) {
      return component.getName().equals("neighbourPin") ? List.of(0, 8) : List.of(19);
    }
    if (type == double.class) {
      return List.of(0.3125);
    }
    return switch (component.getName()) {
      case "id" -> List.of("hidden");
      case "why" -> List.of("scale", "focus", "light", "shade", "colour");
      default -> List.of("PNG");
    };
  }
}
