package leadlight.data;

import com.fasterxml.jackson.annotation.JsonInclude;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.core.util.Separators.Spacing;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.EnumNamingStrategies;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.PropertyNamingStrategies;
import com.fasterxml.jackson.databind.cfg.CoercionAction;
import com.fasterxml.jackson.databind.cfg.CoercionInputShape;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.module.SimpleModule;
import com.fasterxml.jackson.databind.ser.std.ToStringSerializer;
import com.fasterxml.jackson.databind.type.LogicalType;
import com.fasterxml.jackson.datatype.jdk8.Jdk8Module;
import java.nio.file.Path;
import java.time.ZonedDateTime;

/** One strict mapper for all data files. */
final class Json {

  static final JsonMapper MAPPER =
      JsonMapper.builder()
          .addModule(new Jdk8Module())
          .addModule(asText())
          .addModule(Remarks.module())
          .propertyNamingStrategy(PropertyNamingStrategies.SNAKE_CASE)
          .enumNamingStrategy(EnumNamingStrategies.KEBAB_CASE)
          .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(DeserializationFeature.FAIL_ON_NULL_FOR_PRIMITIVES)
          .enable(DeserializationFeature.FAIL_ON_NUMBERS_FOR_ENUMS)
          .disable(MapperFeature.ALLOW_COERCION_OF_SCALARS)
          .disable(DeserializationFeature.ACCEPT_FLOAT_AS_INT)
          .withCoercionConfig(
              LogicalType.Textual,
              c ->
                  c.setCoercion(CoercionInputShape.Integer, CoercionAction.Fail)
                      .setCoercion(CoercionInputShape.Float, CoercionAction.Fail)
                      .setCoercion(CoercionInputShape.Boolean, CoercionAction.Fail))
          .defaultPropertyInclusion(
              JsonInclude.Value.construct(
                  JsonInclude.Include.NON_EMPTY, JsonInclude.Include.ALWAYS))
          .build();

  /** Two spaces and a bare line feed everywhere: the same bytes on every machine. */
  static final ObjectWriter WRITER =
      MAPPER.writer(
          new DefaultPrettyPrinter(
                  Separators.createDefaultInstance().withObjectFieldValueSpacing(Spacing.AFTER))
              .withObjectIndenter(new DefaultIndenter("  ", "\n")));

  private Json() {}

  /** Times (ISO 8601 with the zone) and paths, for trees that are written only. */
  private static SimpleModule asText() {
    return new SimpleModule()
        .addSerializer(ZonedDateTime.class, ToStringSerializer.instance)
        .addSerializer(Path.class, ToStringSerializer.instance);
  }
}
