package leadlight.archive;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import scala.collection.Seq;
import scala.jdk.javaapi.CollectionConverters;

/** The joints of a report: each as the report has it, and what is counted of it beside. */
final class JointRows {

  /** Numbers keep the digits that the report gives them. */
  private static final ObjectMapper JSON =
      JsonMapper.builder()
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
          .build();

  private JointRows() {}

  /** As Spark takes them. */
  static Seq<Row> of(byte[] report) {
    try {
      List<Row> rows = new ArrayList<>();
      for (JsonNode joint : read(report)) {
        rows.add(row(joint));
      }
      return CollectionConverters.asScala(rows);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** The joints as the report's own text has them. */
  static JsonNode read(byte[] report) throws IOException {
    return JSON.readTree(report).get("joints");
  }

  private static Row row(JsonNode joint) {
    List<Row> findings = new ArrayList<>();
    for (JsonNode finding : joint.get("findings")) {
      findings.add(
          RowFactory.create(finding.get("kind").asText(), finding.get("probability").asDouble()));
    }
    List<String> doubts = new ArrayList<>();
    joint.path("doubts").forEach(doubt -> doubts.add(doubt.path("code").asText()));
    return RowFactory.create(
        joint.get("pin").asInt(),
        joint.get("name").asText(),
        joint.get("verdict").asText(),
        CollectionConverters.asScala(findings),
        CollectionConverters.asScala(doubts),
        chances(joint.path("opinions").path("measures")),
        chances(joint.path("opinions").path("reader")),
        joint.toString());
  }

  private static scala.collection.Map<String, Double> chances(JsonNode answers) {
    Map<String, Double> chances = new TreeMap<>();
    answers.properties().forEach(it -> chances.put(it.getKey(), it.getValue().asDouble()));
    return CollectionConverters.asScala(chances);
  }
}
