package leadlight.trial;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.Measure;
import leadlight.model.Quantity;
import leadlight.model.row.Lead;
import leadlight.numeric.Quantiles;
import leadlight.statistics.ClusterRate;
import leadlight.trial.outcome.JointOutcome;
import leadlight.trial.outcome.PhotoOutcome;
import leadlight.trial.outcome.RowResult;

/**
 * How exact the places are, over the leads of right rows, and how honest the stated uncertainties.
 *
 * @param leads number of leads compared
 * @param lateralMedian median distance along the row, over the pitch
 * @param lateralP95 95th percentile of it
 * @param axialMedian median distance along the lead, over the pitch
 * @param axialP95 95th percentile of it
 * @param lateralCovered toes whose true place lies within 2 u along the row
 * @param axialCovered toes whose true place lies within 2 u along the lead
 * @param overhangCovered of leads that truly overhang: true side overhangs within 2 u of the
 *     measured one. How far other leads lie inside their lands is not in the truth
 */
public record Positions(
    int leads,
    double lateralMedian,
    double lateralP95,
    double axialMedian,
    double axialP95,
    ClusterRate lateralCovered,
    ClusterRate axialCovered,
    ClusterRate overhangCovered) {

  /** Measures the leads of the photos whose row is right. */
  public static Positions of(List<PhotoOutcome> photos) {
    List<Double> lateral = new ArrayList<>();
    List<Double> axial = new ArrayList<>();
    ClusterRate.Builder lateralCovered = new ClusterRate.Builder();
    ClusterRate.Builder axialCovered = new ClusterRate.Builder();
    ClusterRate.Builder overhang = new ClusterRate.Builder();
    for (PhotoOutcome photo : photos) {
      if (photo.row() != RowResult.RIGHT) {
        continue;
      }
      for (JointOutcome joint : photo.joints()) {
        if (joint.lateralPx().isEmpty()) {
          continue;
        }
        Lead lead = joint.opinion().joint().lead();
        double across = Math.abs(joint.lateralPx().getAsDouble());
        double along = Math.abs(joint.axialPx().getAsDouble());
        lateral.add(across / photo.truth().pitchPx());
        axial.add(along / photo.truth().pitchPx());
        lateralCovered.add(joint.photo(), across <= 2 * lead.uAcrossPx());
        axialCovered.add(joint.photo(), along <= 2 * lead.uAlongPx());
        addOverhang(joint, photo.truth().leadWidthMm(), overhang);
      }
    }
    return new Positions(
        lateral.size(),
        quantile(lateral, 0.5),
        quantile(lateral, 0.95),
        quantile(axial, 0.5),
        quantile(axial, 0.95),
        lateralCovered.rate(),
        axialCovered.rate(),
        overhang.rate());
  }

  private static void addOverhang(
      JointOutcome joint, double leadWidthMm, ClusterRate.Builder overhanging) {
    Quantity measured = joint.opinion().joint().measures().get(Measure.SIDE_OVERHANG);
    double trueMm = joint.truth().sideOverhangOfLeadWidth().orElse(0) * leadWidthMm;
    if (measured != null && trueMm > 0) {
      overhanging.add(joint.photo(), Math.abs(measured.value() - trueMm) <= 2 * measured.u());
    }
  }

  private static double quantile(List<Double> values, double p) {
    return Quantiles.of(values.stream().mapToDouble(Double::doubleValue).toArray(), p);
  }
}
