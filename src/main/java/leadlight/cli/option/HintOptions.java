package leadlight.cli.option;

import java.util.Optional;
import leadlight.model.UserError;
import leadlight.model.row.RowHint;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** Where a person points at the row. */
public final class HintOptions {

  @Option(
      names = "--near",
      paramLabel = "X,Y",
      description = "The row lies near this place, in pixels of the upright photo.")
  private String near;

  @Option(
      names = "--box",
      paramLabel = "X,Y,W,H",
      description = "The middles of the leads lie in this box, in pixels of the upright photo.")
  private String box;

  @Mixin private BodyOption body;

  public Optional<RowHint> hint() {
    return RowHint.of(place(), body.side());
  }

  private Optional<RowHint.Box> place() {
    if (near != null && box != null) {
      throw new UserError("give --near or --box, not both");
    }
    if (near != null) {
      double[] at = numbers("--near", "X,Y", near, 2);
      return Optional.of(new RowHint.Box(at[0], at[1], 0, 0));
    }
    if (box != null) {
      double[] at = numbers("--box", "X,Y,W,H", box, 4);
      if (at[2] <= 0 || at[3] <= 0) {
        throw new UserError("--box must have a width and a height above 0, is " + box);
      }
      return Optional.of(new RowHint.Box(at[0], at[1], at[2], at[3]));
    }
    return Optional.empty();
  }

  private static double[] numbers(String option, String form, String text, int count) {
    return NumberList.of(text, count)
        .orElseThrow(() -> new UserError(option + " must be " + form + " in pixels, is " + text));
  }
}
