package leadlight.rowcheck;

import java.util.ArrayList;
import java.util.List;
import leadlight.model.row.Lead;
import leadlight.model.row.RowOutcome;
import leadlight.model.row.RowSpec;

/**
 * A few joints from the middle of a row, to look at many places quickly.
 *
 * @param spec the few as a row of their own
 * @param row where they are
 */
record RowSample(RowSpec spec, RowOutcome.Found row) {

  /** Enough for a typical joint and a middle value. */
  private static final int JOINTS = 5;

  /** The whole row if it is short or unevenly pitched. */
  static RowSample of(RowSpec spec, RowOutcome.Found row) {
    if (spec.leads() <= JOINTS || !spec.even()) {
      return new RowSample(spec, row);
    }
    int first = (spec.leads() - JOINTS) / 2;
    List<Lead> leads = new ArrayList<>();
    for (int i = 0; i < JOINTS; i++) {
      leads.add(MovedRow.renumbered(i + 1, row.leads().get(first + i)));
    }
    RowSpec few =
        new RowSpec(
            spec.connectorId(),
            spec.lands().subList(first, first + JOINTS),
            spec.pitchMm(),
            spec.leadWidthMm(),
            spec.pin1Reversed());
    return new RowSample(few, MovedRow.with(row, row.mmToPx(), leads));
  }
}
