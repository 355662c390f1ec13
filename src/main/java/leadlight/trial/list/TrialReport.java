package leadlight.trial.list;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import leadlight.statistics.ClusterRate;
import leadlight.statistics.Rate;
import leadlight.trial.FindingTally;
import leadlight.trial.GradedRows;
import leadlight.trial.NoteSummary;
import leadlight.trial.Positions;
import leadlight.trial.RowTally;
import leadlight.trial.Tally;
import leadlight.trial.TrialSummary;
import leadlight.trial.outcome.NoteOutcome;
import leadlight.trial.outcome.PhotoOutcome;
import leadlight.trial.outcome.RowResult;
import leadlight.trial.outcome.Slip;

/** A trial as a JSON tree. Shares are pure numbers; a share of nothing is left out. */
public final class TrialReport {

  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;
  private static final int DECIMALS = 6;

  private TrialReport() {}

  /**
   * The tree.
   *
   * @param toolVersion version of Leadlight
   * @param truePositions whether the joints were given the true row
   * @param bench the enrolled bench that they were judged by, if one was named
   * @param outcomes the photos with truth
   * @param notes the real photos
   */
  public static ObjectNode of(
      String toolVersion,
      boolean truePositions,
      Optional<String> bench,
      List<PhotoOutcome> outcomes,
      List<NoteOutcome> notes) {
    ObjectNode root = JSON.objectNode();
    root.put("schema", "leadlight-trial-1");
    root.putObject("tool").put("name", "Leadlight").put("version", toolVersion);
    root.put("class", 2);
    root.put("true_positions_given", truePositions);
    bench.ifPresent(it -> root.put("bench", it));
    if (!outcomes.isEmpty()) {
      root.set("truth", summary(TrialSummary.of(outcomes)));
      ArrayNode photos = root.putArray("photos");
      outcomes.forEach(outcome -> photos.add(photo(outcome)));
    }
    if (!notes.isEmpty()) {
      root.set("real", summary(NoteSummary.of(notes)));
      GradedRows graded = GradedRows.of(notes);
      if (graded.any()) {
        root.set("graded", graded(graded));
      }
      ArrayNode photos = root.putArray("real_photos");
      notes.forEach(outcome -> photos.add(photo(outcome)));
    }
    return root;
  }

  private static ObjectNode summary(TrialSummary summary) {
    ObjectNode node = JSON.objectNode();
    node.put("photos", summary.photos());
    node.set("rows", rows(summary.rows()));
    node.put("joints_in_rows_not_found", summary.jointsInRowsNotFound());
    node.set("positions", positions(summary.positions()));
    node.set("joints", tally(summary.all()));
    node.set("by_lamp", groups(summary.byLamp()));
    node.set("by_pitch", groups(summary.byPitch()));
    ObjectNode findings = node.putObject("by_finding");
    for (FindingTally tally : summary.byFinding()) {
      ObjectNode finding = findings.putObject(tally.kind().id());
      finding.set("missed", rate(tally.missed()));
      finding.set("unjudged", rate(tally.unjudged()));
      finding.set("named", rate(tally.named()));
      finding.set("called_in_error", rate(tally.calledInError()));
    }
    return node;
  }

  private static ObjectNode groups(Map<String, TrialSummary.Group> groups) {
    ObjectNode node = JSON.objectNode();
    groups.forEach(
        (name, group) ->
            node.putObject(name)
                .<ObjectNode>set("rows", rows(group.rows()))
                .set("joints", tally(group.joints())));
    return node;
  }

  private static ObjectNode rows(RowTally rows) {
    ObjectNode node = JSON.objectNode();
    node.set("right", rate(rows.right()));
    node.set("not_found", rate(rows.notFound()));
    node.set("wrong", rate(rows.wrong()));
    return node;
  }

  private static ObjectNode positions(Positions at) {
    ObjectNode node = JSON.objectNode();
    node.put("leads", at.leads());
    put(node, "lateral_median_of_pitch", at.lateralMedian());
    put(node, "lateral_p95_of_pitch", at.lateralP95());
    put(node, "axial_median_of_pitch", at.axialMedian());
    put(node, "axial_p95_of_pitch", at.axialP95());
    node.set("lateral_within_2u", rate(at.lateralCovered()));
    node.set("axial_within_2u", rate(at.axialCovered()));
    node.set("side_overhang_within_2u", rate(at.overhangCovered()));
    return node;
  }

  private static ObjectNode tally(Tally tally) {
    ObjectNode node = JSON.objectNode();
    node.put("joints", tally.joints());
    node.set("missed", rate(tally.missed()));
    node.set("false_calls", rate(tally.falseCalls()));
    node.set("unjudged", rate(tally.unjudged()));
    node.set("unjudged_defects", rate(tally.unjudgedDefects()));
    node.set("named", rate(tally.named()));
    return node;
  }

  private static ObjectNode photo(PhotoOutcome outcome) {
    ObjectNode node = JSON.objectNode();
    node.put("photo", outcome.truth().photo());
    node.put("lamp", outcome.truth().lamp());
    put(node, "pitch_px", outcome.truth().pitchPx());
    row(node, outcome.row(), outcome.medianOfPitch(), outcome.reason());
    ArrayNode slips = node.putArray("slips");
    for (Slip slip : Slip.of(outcome)) {
      slips
          .addObject()
          .put("pin", slip.pin())
          .put("result", name(slip.result()))
          .put("truth", slip.truth())
          .put("opinion", slip.opinion());
    }
    return node;
  }

  private static ObjectNode summary(NoteSummary summary) {
    ObjectNode node = JSON.objectNode();
    node.put("photos", summary.photos());
    node.set("rows", rows(summary.rows()));
    ObjectNode groups = node.putObject("by_pitch");
    summary
        .groups()
        .forEach(
            (name, group) -> {
              ObjectNode one = groups.putObject(name);
              one.set("rows", rows(group.rows()));
              put(one, "lateral_median_of_pitch", group.lateralMedian());
              one.set("factory_called_defect", rate(group.factoryDefects()));
              one.set("factory_unjudged", rate(group.factoryUnjudged()));
              one.set("hand_work_called_defect", rate(group.otherDefects()));
            });
    return node;
  }

  private static ObjectNode graded(GradedRows graded) {
    ObjectNode node = JSON.objectNode();
    node.set("good_said_of_bad", rate(graded.badSaidGood()));
    node.set("bad_called", rate(graded.badCalled()));
    node.set("bad_unjudged", rate(graded.badUnjudged()));
    node.set("good_called", rate(graded.goodCalled()));
    node.set("good_acceptable", rate(graded.goodSaidGood()));
    node.set("good_unjudged", rate(graded.goodUnjudged()));
    node.set("in_rows_not_found", rate(graded.notFound()));
    put(node, "auc_of_suspicion", graded.auc());
    put(node, "auc_of_suspicion_within_rows", graded.aucWithinRows());
    return node;
  }

  private static ObjectNode photo(NoteOutcome outcome) {
    ObjectNode node = JSON.objectNode();
    node.put("photo", outcome.note().photo());
    put(node, "pitch_px", outcome.note().pitchPx());
    node.put("factory", outcome.note().factory());
    row(node, outcome.row(), outcome.medianOfPitch(), outcome.reason());
    node.put("overlaps_lengthwise", outcome.overlaps());
    ArrayNode verdicts = node.putArray("verdicts");
    outcome.verdicts().forEach(verdict -> verdicts.add(verdict.id()));
    if (!outcome.note().grades().isEmpty()) {
      ObjectNode grades = node.putObject("grades");
      new TreeMap<>(outcome.note().grades())
          .forEach((pin, grade) -> grades.put("" + pin, name(grade)));
      ArrayNode suspicions = node.putArray("suspicions");
      outcome.suspicions().forEach(suspicion -> suspicions.add(rounded(suspicion)));
    }
    return node;
  }

  private static void row(ObjectNode node, RowResult row, double medianOfPitch, String reason) {
    node.put("row", name(row));
    put(node, "median_distance_of_pitch", medianOfPitch);
    if (!reason.isEmpty()) {
      node.put("reason", reason);
    }
  }

  private static ObjectNode rate(ClusterRate rate) {
    ObjectNode node = rate(rate.plain());
    if (rate.of() > 0) {
      node.put("photos", rate.clusters());
      put(node, "design_effect", rate.designEffect());
      put(node, "by_photo_95_lower", rate.lower());
      put(node, "by_photo_95_upper", rate.upper());
    }
    return node;
  }

  private static ObjectNode rate(Rate rate) {
    ObjectNode node = JSON.objectNode();
    node.put("count", rate.count());
    node.put("of", rate.of());
    put(node, "share", rate.share());
    put(node, "wilson_95_lower", rate.lower());
    put(node, "wilson_95_upper", rate.upper());
    return node;
  }

  private static String name(Enum<?> value) {
    return value.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private static void put(ObjectNode node, String name, double value) {
    if (Double.isFinite(value)) {
      node.put(name, rounded(value));
    }
  }

  private static BigDecimal rounded(double value) {
    return new BigDecimal(value).setScale(DECIMALS, RoundingMode.HALF_EVEN);
  }
}
