package leadlight.data;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import leadlight.connector.Connector;
import leadlight.connector.ConnectorLibrary;
import leadlight.grade.limits.AcceptanceSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The data files against their published schemas, by a validator that is not ours. */
class ModelsTest {

  private static final Path MODELS = Path.of("models");

  @TempDir Path folder;

  static List<String> connectors() {
    return ConnectorLibrary.builtIn().ids();
  }

  static List<String> acceptanceSets() {
    return AcceptanceSet.builtInIds();
  }

  @ParameterizedTest
  @MethodSource("connectors")
  void everyConnectorKeepsItsSchema(String id) throws IOException {
    assertThat(faults("connector", MODELS.resolve("connectors/" + id + ".json"))).isEmpty();
    assertThat(ConnectorLibrary.builtIn().find(id).id()).isEqualTo(id);
  }

  @ParameterizedTest
  @MethodSource("acceptanceSets")
  void everyLimitsFileKeepsItsSchema(String id) throws IOException {
    assertThat(faults("acceptance", MODELS.resolve("acceptance/" + id + ".json"))).isEmpty();
  }

  @Test
  void whatIsWrittenKeepsTheSchemaToo() throws IOException {
    Connector connector = ConnectorLibrary.builtIn().find("usb-c-16");
    Path file = folder.resolve("written.json");
    DataFile.write(file, connector);

    assertThat(faults("connector", file)).isEmpty();
    assertThat(DataFile.at(file).read(Connector.class)).isEqualTo(connector);
  }

  @Test
  void theSchemaRefusesWhatTheProgramRefuses() throws IOException {
    String text = Files.readString(MODELS.resolve("connectors/flex-0.5.json"));
    Path file = folder.resolve("bad.json");
    Files.writeString(file, text.replace("\"pitch_mm\"", "\"pitch\""));

    assertThat(faults("connector", file)).isNotEmpty();
  }

  @Test
  void theListsOfBuiltInFilesAreTheFolders() throws IOException {
    assertThat(names("connectors"))
        .containsExactlyInAnyOrderElementsOf(
            Stream.concat(connectors().stream(), Stream.of("catalogue")).toList());
    assertThat(names("acceptance")).containsExactlyInAnyOrderElementsOf(acceptanceSets());
  }

  private static List<String> names(String of) throws IOException {
    try (Stream<Path> files = Files.list(MODELS.resolve(of))) {
      return files.map(f -> f.getFileName().toString().replaceFirst("\\.json$", "")).toList();
    }
  }

  private static List<String> faults(String schemaName, Path file) throws IOException {
    String schemaText = Files.readString(MODELS.resolve("schema/" + schemaName + ".schema.json"));
    Schema schema =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(schemaText, InputFormat.JSON);
    return schema.validate(Files.readString(file), InputFormat.JSON).stream()
        .map(Object::toString)
        .toList();
  }
}
