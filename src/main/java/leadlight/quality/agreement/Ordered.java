package leadlight.quality.agreement;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.UserError;

/**
 * Verdicts with an order, and how much it weighs to be so many steps apart.
 *
 * @param verdicts from best to worst
 * @param squared whether two steps weigh four times one (Fleiss and Cohen 1973) or twice
 */
public record Ordered(List<String> verdicts, boolean squared) {

  /**
   * Copies.
   *
   * @throws UserError if there are fewer than three, or one is named twice
   */
  public Ordered {
    verdicts = verdicts.stream().map(String::strip).toList();
    if (verdicts.size() < 3 || verdicts.stream().distinct().count() < verdicts.size()) {
      throw new UserError(
          "weighted kappa needs three different verdicts or more, best first, not "
              + String.join(",", verdicts));
    }
  }

  /** Weight of each pair, 0 on the diagonal. */
  public List<List<Double>> disagreement() {
    List<List<Double>> rows = new ArrayList<>();
    for (int i = 0; i < verdicts.size(); i++) {
      List<Double> row = new ArrayList<>();
      for (int j = 0; j < verdicts.size(); j++) {
        double steps = Math.abs(i - j);
        row.add(squared ? steps * steps : steps);
      }
      rows.add(row);
    }
    return rows;
  }

  /** "acceptable, limit, defect; linear weights". */
  public String words() {
    return String.join(", ", verdicts) + (squared ? "; squared weights" : "; linear weights");
  }
}
