package leadlight.row;

import leadlight.model.row.RowOutcome;

/**
 * A row that might be meant.
 *
 * @param row the row
 * @param endsShow whether it shows by itself where the row ends; otherwise an end lead may be
 *     missing or bent, or the row go on
 */
public record PossibleRow(RowOutcome.Found row, boolean endsShow) {}
