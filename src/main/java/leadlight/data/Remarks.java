package leadlight.data;

import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.databind.DeserializationContext;
import com.fasterxml.jackson.databind.JsonDeserializer;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.JsonSerializer;
import com.fasterxml.jackson.databind.SerializerProvider;
import com.fasterxml.jackson.databind.module.SimpleModule;
import java.io.IOException;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import leadlight.model.FindingKind;
import leadlight.model.Question;
import leadlight.model.joint.Chances;
import leadlight.model.remark.Doubt;
import leadlight.model.remark.Note;
import leadlight.model.remark.Remark;

/**
 * Remarks and chances in files. A remark is {@code {"code": ..., "args": {...}}} and is read back
 * as the record of that code among those that its type permits; chances go by the questions' ids.
 */
final class Remarks {

  private Remarks() {}

  static SimpleModule module() {
    return new SimpleModule()
        .addSerializer(Remark.class, new RemarkWriter())
        .addDeserializer(Doubt.class, new RemarkReader<>(Doubt.class))
        .addDeserializer(Note.class, new RemarkReader<>(Note.class))
        .addSerializer(Chances.class, new ChancesWriter())
        .addDeserializer(Chances.class, new ChancesReader());
  }

  private static final class RemarkWriter extends JsonSerializer<Remark> {
    @Override
    public void serialize(Remark remark, JsonGenerator json, SerializerProvider provider)
        throws IOException {
      json.writeStartObject();
      json.writeStringField("code", remark.code());
      json.writeObjectFieldStart("args");
      for (Map.Entry<String, Object> arg : remark.args().entrySet()) {
        json.writeObjectField(arg.getKey(), arg.getValue());
      }
      json.writeEndObject();
      json.writeEndObject();
    }
  }

  private static final class RemarkReader<T extends Remark> extends JsonDeserializer<T> {

    private final Class<T> type;

    RemarkReader(Class<T> type) {
      this.type = type;
    }

    @Override
    public T deserialize(JsonParser parser, DeserializationContext context) throws IOException {
      JsonNode tree = context.readTree(parser);
      String code = tree.path("code").asText();
      for (Class<? extends Remark> kind : Remark.kinds(type)) {
        if (Remark.codeOf(kind).equals(code)) {
          return type.cast(made(kind, tree.path("args")));
        }
      }
      throw context.weirdStringException(code, type, "no such code");
    }

    private static Object made(Class<?> kind, JsonNode args) {
      RecordComponent[] components = kind.getRecordComponents();
      List<Object> values = new ArrayList<>();
      for (RecordComponent component : components) {
        values.add(value(component, args.path(Remark.snake(component.getName()))));
      }
      Class<?>[] types =
          Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
      try {
        return kind.getDeclaredConstructor(types).newInstance(values.toArray());
      } catch (ReflectiveOperationException e) {
        Throwable why = e instanceof InvocationTargetException inside ? inside.getCause() : e;
        throw new IllegalArgumentException(kind.getSimpleName() + " of " + args, why);
      }
    }

    private static Object value(RecordComponent component, JsonNode given) {
      Class<?> type = component.getType();
      if (type == OptionalDouble.class) {
        return given.isNumber() ? OptionalDouble.of(given.asDouble()) : OptionalDouble.empty();
      }
      if (given.isMissingNode()) {
        throw new IllegalArgumentException(component.getName() + " is missing");
      }
      if (type == FindingKind.class) {
        return kind(given.asText());
      }
      if (type == int.class) {
        return given.asInt();
      }
      if (type == double.class) {
        return given.asDouble();
      }
      return type == boolean.class ? (Object) given.asBoolean() : given.asText();
    }

    private static FindingKind kind(String id) {
      return Arrays.stream(FindingKind.values())
          .filter(kind -> kind.id().equals(id))
          .findFirst()
          .orElseThrow(() -> new IllegalArgumentException("no finding " + id));
    }
  }

  private static final class ChancesWriter extends JsonSerializer<Chances> {
    @Override
    public void serialize(Chances chances, JsonGenerator json, SerializerProvider provider)
        throws IOException {
      json.writeStartObject();
      for (Map.Entry<Question, Double> answer : chances.answers().entrySet()) {
        json.writeNumberField(answer.getKey().id(), answer.getValue());
      }
      json.writeEndObject();
    }
  }

  private static final class ChancesReader extends JsonDeserializer<Chances> {
    @Override
    public Chances deserialize(JsonParser parser, DeserializationContext context)
        throws IOException {
      JsonNode tree = context.readTree(parser);
      Map<Question, Double> answers = new EnumMap<>(Question.class);
      for (Question question : Question.values()) {
        if (tree.path(question.id()).isNumber()) {
          answers.put(question, tree.path(question.id()).asDouble());
        }
      }
      return new Chances(answers);
    }
  }
}
