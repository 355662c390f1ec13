package leadlight.archive;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * An archive beside what {@code batch} wrote of the same photos by the same version: {@code mvn
 * -Pspark test -Dtest=AgainstScoreBenchmark -Darchive.folder=ARCHIVE -Darchive.reports=FOLDER}.
 */
@EnabledIfSystemProperty(named = "archive.folder", matches = ".+")
class AgainstScoreBenchmark {

  private static final ObjectMapper JSON = new ObjectMapper();

  @Test
  void eachJointIsThatOfItsReportToTheByte() throws IOException {
    Map<String, List<String>> reports = reports(Path.of(System.getProperty("archive.reports")));
    SparkSession spark =
        SparkSession.builder().master("local[1]").config("spark.ui.enabled", "false").getOrCreate();
    int photos = 0;
    int joints = 0;
    List<String> differ = new ArrayList<>();
    for (Row row :
        new Results(spark, System.getProperty("archive.folder"))
            .scored(PhotoScoring.version())
            .orElseThrow()
            .selectExpr("photo", "joints.json as joints")
            .collectAsList()) {
      String name = Path.of(row.<String>getAs("photo")).getFileName().toString();
      List<String> archived = row.getList(1);
      photos++;
      joints += archived.size();
      if (!archived.equals(reports.get(name))) {
        differ.add(name);
      }
    }
    System.out.println(photos + " photos, " + joints + " joints, differing: " + differ);
    assertThat(differ).isEmpty();
    assertThat(joints).isPositive();
    spark.stop();
  }

  private static Map<String, List<String>> reports(Path folder) throws IOException {
    Map<String, List<String>> reports = new HashMap<>();
    try (var files = Files.walk(folder)) {
      for (Path file : files.filter(it -> it.toString().endsWith(".json")).sorted().toList()) {
        byte[] report = Files.readAllBytes(file);
        JsonNode whole = JSON.readTree(report);
        if (whole.path("schema").asText().startsWith("leadlight-report-")) {
          List<String> joints = new ArrayList<>();
          JointRows.read(report).forEach(joint -> joints.add(joint.toString()));
          reports.put(whole.path("photo").path("file").asText(), joints);
        }
      }
    }
    return reports;
  }
}
